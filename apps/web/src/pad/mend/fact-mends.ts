import { type ByPlayer, otherSide } from "@courtloom/core";
import type { EntryBody, MatchView, TimelineFact, ViewedPoint } from "@courtloom/match-log";
import type { Mending } from "./mend-context.ts";
import { putBack, replayedInstead, takenOut } from "./mend-fact.ts";
import { endsInGame, endsSince, serverBetween, serverSince } from "./mend-order.ts";
import { isWinnerAlone, lastBallLeftOut, madeNotSeen, pointPutIn, winnerMended } from "./mend-point.ts";
import { mendedFrame } from "./mended-frame.ts";

/** What a mend is about: the fact itself, what is missing before it, or what was wrong since. */
export const MEND_PARTS = ["This entry", "Before it", "Since it"] as const;
export type MendPart = (typeof MEND_PARTS)[number];

/** One thing that can be done about a fact: entries to be confirmed, its drawing, or the score before it. */
export interface FactMend {
  readonly part: MendPart;
  readonly label: string;
  readonly does: { readonly bodies: readonly EntryBody[] } | "draw" | "score";
}

type Some = readonly Omit<FactMend, "part">[];

const mend = (label: string, ...bodies: readonly EntryBody[]): Some[number] => ({ label, does: { bodies } });

const inPart = (part: MendPart, some: Some): readonly FactMend[] => some.map((each) => ({ ...each, part }));

const leftOutMends = (viewed: ViewedPoint, view: MatchView): Some => {
  const drawn = mendedFrame(viewed, view, "every");
  const said = viewed.point.shots.at(-1)?.leftOut;
  if (!drawn) return [];
  const one = (reason: "netCord" | "calledOut", label: string): Some => {
    const body = said === reason ? undefined : lastBallLeftOut(viewed, reason, drawn.frame);
    return body ? [mend(label, body)] : [];
  };
  return [...one("netCord", "Net cord decided it"), ...one("calledOut", "Called out, I saw it in")];
};

/** What can be said anew of a point that counts. Balls are mended in their drawing, where their ending shows. */
const pointMends = (viewed: ViewedPoint, { view, names }: Mending): Some => {
  const { point } = viewed;
  const other = otherSide(point.winner);
  const draws = mendedFrame(viewed, view, "every") !== undefined;
  const alone = isWinnerAlone(point);
  return [
    ...(draws && !alone ? [{ label: "Mend its drawing", does: "draw" } as const] : []),
    ...(alone ? [mend(`${names[other]} won it`, winnerMended(viewed, other))] : []),
    ...(draws && alone ? [{ label: "Add details", does: "draw" } as const] : []),
    ...leftOutMends(viewed, view),
    ...(point.level === "score" ? [] : [mend("Not seen: keep who won", madeNotSeen(viewed))]),
    mend("Replayed or a let: nothing counts", ...replayedInstead(viewed.id, view)),
  ];
};

const missedMends = (row: TimelineFact, viewed: ViewedPoint | undefined, names: ByPlayer<string>): Some => [
  ...(viewed
    ? [
        mend(`Point missed: ${names.A} won it`, pointPutIn(viewed, "A")),
        mend(`Point missed: ${names.B} won it`, pointPutIn(viewed, "B")),
      ]
    : []),
  ...(row.before.over ? [] : [{ label: "More missed, or the score was other", does: "score" } as const]),
];

const serverMends = ({ id, before }: TimelineFact, { names, view }: Mending): Some => {
  if (!before.server) return [];
  const to = otherSide(before.server);
  const now = view.score.server;
  return [
    mend(`My slip: ${names[to]} served`, serverSince(id, to, "chartist")),
    mend(`Players’ slip: ${names[to]} served`, serverSince(id, to, "players")),
    ...(now
      ? [mend(`Players’ slip, put right now: ${names[now]} serves`, ...serverBetween(id, to, now))]
      : []),
  ];
};

const endsMends = (viewed: ViewedPoint | undefined, { view, endOfA }: Mending): Some => {
  if (!viewed || endOfA === undefined) return [];
  return [
    mend("Ends were wrong until now", endsSince(viewed.id, endOfA)),
    mend("Ends were wrong in this game", ...endsInGame(viewed.id, view, endOfA)),
  ];
};

const penaltyMends = ({ id, fact }: TimelineFact, { names }: Mending): Some => {
  if (fact.kind !== "PenaltyGiven") return [];
  const against = otherSide(fact.against);
  return [
    mend(`It was against ${names[against]}`, { kind: "EntryAmended", target: id, to: { ...fact, against } }),
  ];
};

/** What can be done about one fact of the match, most likely first; nothing once the match is closed. SPEC PD80. */
export const factMends = (row: TimelineFact, mending: Mending): readonly FactMend[] => {
  const { view, names } = mending;
  if (view.sealed) return [];
  if (row.voided) return inPart("This entry", [mend("Put it back", putBack(row.id))]);
  // As the fold reads it: ends that were mended since are already turned.
  const viewed = view.points.find(({ id }) => id === row.id);
  return [
    ...inPart("This entry", [
      ...(viewed ? pointMends(viewed, mending) : []),
      ...penaltyMends(row, mending),
      mend("Take it out", ...takenOut(row.id, view)),
    ]),
    ...inPart("Before it", missedMends(row, viewed, names)),
    ...inPart("Since it", [...serverMends(row, mending), ...endsMends(viewed, mending)]),
  ];
};
