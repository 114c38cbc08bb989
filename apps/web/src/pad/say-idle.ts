import type { ByPlayer } from "@courtloom/core";
import type { MatchView } from "@courtloom/match-log";
import type { Opened } from "./draft-reducer.ts";
import { type Ending, isEmptyDraft, type PointDraft, type PointFrame } from "./point-draft.ts";
import { endingOf, nextStriker, strokeOf } from "./read-draft.ts";
import { sayServiceSide } from "./say-score.ts";
import { sayStroke } from "./say-stroke.ts";
import { type SeatChoice, sideAtFirstEnd } from "./shown-ends.ts";
import type { StripText } from "./strip.tsx";

export interface IdleFacts {
  readonly view: MatchView;
  readonly draft: PointDraft;
  readonly frame: PointFrame;
  readonly names: ByPlayer<string>;
  readonly seat: SeatChoice;
  /** Of a rest at a change of ends or between sets. */
  readonly secondsLeft: number | undefined;
  readonly opened: Opened | undefined;
  readonly redrawing: boolean;
  /** False at score only, where nobody says what became of the serve. */
  readonly asksServe: boolean;
  /** Said once after something was taken back. */
  readonly message: string | undefined;
}

const clock = (seconds: number): string =>
  `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;

const saysRest = ({ view, secondsLeft }: IdleFacts): string => {
  if (view.score.pause === "noRest") return "no sit-down";
  return secondsLeft === undefined ? "" : `${clock(secondsLeft)} left`;
};

/** "Noor is now far; the court has turned." */
const saysChange = (facts: IdleFacts): StripText => {
  const { names, frame, seat, view } = facts;
  const first = names[sideAtFirstEnd(frame.endOfA)];
  const far = names[sideAtFirstEnd(frame.endOfA) === "A" ? "B" : "A"];
  const lead = view.score.pause === "set" ? "Set break." : "Change of ends.";
  const aside = saysRest(facts);
  if (seat === "alwaysNear") return { lead, rest: `${first} stays near in this drawing.`, aside };
  const place = seat === "side" ? "right" : "far";
  return { lead, rest: `${far} is now ${place}; the court has turned.`, aside };
};

/** A set ended where no ends change: the rest is all that there is to say. */
const saysSetBreak = (facts: IdleFacts): StripText => ({
  lead: "Set break.",
  rest: `${facts.names[facts.frame.server]} serves next; ends stay.`,
  aside: saysRest(facts),
});

const DONE = { aside: "Done, or mend" } as const;

/** A last shot that nobody drew. */
const saysUndrawn = (
  { draft, frame, names }: IdleFacts,
  { winner }: Ending & { type: "undrawn" },
): StripText => {
  const striker = nextStriker(draft, frame);
  return { lead: `${names[striker]}${striker === winner ? ": winner." : " missed."}`, ...DONE };
};

const saysBall = (facts: IdleFacts): StripText | undefined => {
  const { draft, frame, names } = facts;
  const ending = endingOf(draft, frame);
  if (ending?.type === "undrawn") return saysUndrawn(facts, ending);
  const last = draft.shots.at(-1);
  if (!last) return undefined;
  const saying = sayStroke(strokeOf(last, frame));
  const name = names[last.striker];
  if (ending?.type === "missed")
    return { lead: `${name}: ${ending.miss ?? "called out"}.`, rest: saying.lead, ...DONE };
  if (ending) return { lead: `${name}: ${ending.type === "winner" ? "winner" : "forced a miss"}.`, ...DONE };
  const aside = frame.subject ? "Go on, or how it ended" : "Draw on, or how it ended";
  return { lead: `${name}: ${saying.lead.toLowerCase()}`, rest: saying.rest, aside };
};

const saysMended = ({ draft, frame, names, opened }: IdleFacts): StripText | undefined => {
  const shot = typeof opened === "number" ? draft.shots[opened] : undefined;
  if (!shot) return undefined;
  const saying = sayStroke(strokeOf(shot, frame));
  return {
    lead: `${names[shot.striker]}: ${saying.lead.toLowerCase()}`,
    rest: saying.rest,
    aside: "mending",
  };
};

const saysFirstBall = ({ frame, names }: IdleFacts): StripText =>
  frame.subject
    ? { lead: `Touch ${names[frame.subject]}’s kept balls,`, rest: "drag line, short and last ones" }
    : { lead: "Draw the return", rest: "from where it was struck" };

/** What the strip says while no finger draws: the most useful thing at this moment. */
export const sayIdle = (facts: IdleFacts): StripText => {
  const { view, draft, frame, names, redrawing, asksServe, message } = facts;
  const server = names[frame.server];
  if (message) return { lead: message };
  if (redrawing) return { lead: "Redraw this ball", rest: "on the court" };
  const mended = saysMended(facts);
  if (mended) return mended;
  const ball = saysBall(facts);
  if (ball) return ball;
  if (draft.serve === "ace") return { lead: `Ace ${server}`, aside: "Done, or mend" };
  if (draft.serve === "doubleFault") return { lead: `Double fault ${server}`, aside: "Done, or mend" };
  if (draft.serve) return saysFirstBall(facts);
  if (isEmptyDraft(draft) && view.points.length > 0) {
    if (view.score.endsDue) return saysChange(facts);
    if (view.score.pause === "set") return saysSetBreak(facts);
  }
  const side = sayServiceSide(view.score);
  if (draft.faults === 1)
    return { lead: "Second serve", rest: `${server}, ${side}`, aside: "In, ace or double?" };
  return { lead: `${server} serves`, rest: side, ...(asksServe ? { aside: "In, fault or ace?" } : {}) };
};
