import type { ByPlayer } from "@courtloom/core";
import {
  applyEntry,
  ENTRY_VERSION,
  type EntryBody,
  type MatchView,
  scoreRefusal,
  type TimelineFact,
  timelineOf,
  type ViewedPoint,
} from "@courtloom/match-log";
import { type ScoreState, scoreErrorText } from "@courtloom/tennis";
import { SET_ASIDE_WORDS } from "../../match-words/set-aside-words.ts";
import { sayServiceSide } from "../say-score.ts";
import { scoreWords } from "../second/score-words.ts";
import { sayFact } from "./say-fact.ts";

/** What a mend would change, in words. */
export interface Change {
  /** One sentence about the score; always there. */
  readonly score: string;
  /** What else changes, each a sentence; empty when nothing does. */
  readonly also: readonly string[];
  /** Why it cannot be done; then nothing is written. */
  readonly impossible?: string;
}

const PREVIEW = "preview";

/** The match with some entries more; nothing is charted by asking. */
export const viewWith = (view: MatchView, bodies: readonly EntryBody[], epoch: number): MatchView =>
  bodies.reduce((now, body, i) => {
    const entry = { v: ENTRY_VERSION, id: `${PREVIEW}-${i}`, n: i + 1, atMs: 0, wallMs: 0, body } as const;
    return applyEntry(now, { pos: now.pos + 1, laneId: PREVIEW, epoch, entry });
  }, view);

/** Which game of the match a point is in, whoever won those before it. */
const gameOf = ({ before }: ViewedPoint): string =>
  `${before.sets.length} ${before.games[0] + before.games[1]}`;

const countChanged = (now: MatchView, then: MatchView, of: (point: ViewedPoint) => string): number => {
  const was = new Map(now.points.map((point) => [point.id, of(point)]));
  return then.points.filter((point) => was.has(point.id) && was.get(point.id) !== of(point)).length;
};

const points = (count: number): string => (count === 1 ? "1 point" : `${count} points`);

const scoreSentence = (now: ScoreState, then: ScoreState): string =>
  scoreWords(now) === scoreWords(then)
    ? `No change in the score: ${scoreWords(now)}.`
    : `The score ${scoreWords(now)} becomes ${scoreWords(then)}.`;

const MOST_NAMED = 3;

/** "2 facts are set aside: …", the first ones by name. */
const named = (facts: readonly TimelineFact[], becomes: string, names: ByPlayer<string>): string[] => {
  if (facts.length === 0) return [];
  const told = facts.slice(0, MOST_NAMED).map(({ fact }) => sayFact(names, fact));
  const rest = facts.length > MOST_NAMED ? ` and ${facts.length - MOST_NAMED} more` : "";
  return [`${becomes}: ${told.join("; ")}${rest}.`];
};

const asideSentences = (now: MatchView, then: MatchView, names: ByPlayer<string>): readonly string[] => {
  if (now.setAside.length === 0 && then.setAside.length === 0) return [];
  const [before, after] = [now, then].map((view) => new Set(view.setAside.map(({ id }) => id)));
  const timeline = timelineOf(then).filter(({ voided }) => !voided);
  const gone = timeline.filter(
    ({ id }) => after?.has(id) && !before?.has(id) && now.trail.facts.some((f) => f.id === id),
  );
  const back = timeline.filter(({ id }) => before?.has(id) && !after?.has(id));
  return [
    ...named(gone, "No longer fits, kept and not counted", names),
    ...named(back, "Counts again", names),
  ];
};

const serviceSentence = (now: ScoreState, then: ScoreState, names: ByPlayer<string>): readonly string[] => {
  if (!then.server || (then.server === now.server && then.side === now.side)) return [];
  return [`${names[then.server]} serves next, ${sayServiceSide(then)}.`];
};

const alsoSentences = (now: MatchView, then: MatchView, names: ByPlayer<string>): readonly string[] => {
  const moved = countChanged(now, then, gameOf);
  const served = countChanged(now, then, ({ server }) => server);
  return [
    ...serviceSentence(now.score, then.score, names),
    ...(then.endOfA !== undefined && then.endOfA !== now.endOfA
      ? [`Next point: ${names.A} is ${then.endOfA}.`]
      : []),
    ...(moved > 0
      ? [`${points(moved)} charted later ${moved === 1 ? "moves" : "move"} to another game.`]
      : []),
    ...(served > 0
      ? [`${points(served)} charted later ${served === 1 ? "has" : "have"} the other server.`]
      : []),
    ...asideSentences(now, then, names),
    ...(now.score.over && !then.score.over ? ["The match is no longer over."] : []),
    ...(!now.score.over && then.score.over ? ["The match is over then."] : []),
  ];
};

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

/** What to do where the score cannot take a fact. */
const MATCH_OVER = "The match is over by then. Take out its last point or its end first.";

/** Facts that the entries say something of. */
const aboutOf = (bodies: readonly EntryBody[]): ReadonlySet<string> =>
  new Set(
    bodies.flatMap((body, i) => [
      `${PREVIEW}-${i}`,
      ...(body.kind === "EntryAmended" || body.kind === "EntryRestored" ? [body.target] : []),
    ]),
  );

const whyNot = (now: MatchView, then: MatchView, bodies: readonly EntryBody[]): string | undefined => {
  if (now.sealed) return "This match is closed. Only a director can put something right now.";
  const about = aboutOf(bodies);
  const refused = then.setAside.find(({ id }) => about.has(id));
  if (!refused) return undefined;
  const told = scoreRefusal(then, refused.id);
  if (!told) return `It cannot be done: ${SET_ASIDE_WORDS[refused.reason]}.`;
  return told.code === "match_over"
    ? MATCH_OVER
    : capital(scoreErrorText(told).replaceAll(/(\d)-(\d)/g, "$1–$2"));
};

/**
 * What some entries would change, before anybody confirms them: pure, nothing is written. A change that the score
 * cannot take says why and what to do. SPEC PD81, PD82.
 */
export const previewChange = (
  view: MatchView,
  bodies: readonly EntryBody[],
  { epoch, names }: { readonly epoch: number; readonly names: ByPlayer<string> },
): Change => {
  const then = viewWith(view, bodies, epoch);
  const impossible = whyNot(view, then, bodies);
  return {
    score: scoreSentence(view.score, then.score),
    also: alsoSentences(view, then, names),
    ...(impossible ? { impossible } : {}),
  };
};
