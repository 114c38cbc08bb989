import type { Side } from "@courtloom/core";
import type { Point, Serve, Shot } from "@courtloom/match-log";
import type { Ending, PointDraft, PointFrame } from "./point-draft.ts";
import { endingOf, winnerOf } from "./read-draft.ts";

const serveOf = ({ serve, faults, lets }: PointDraft): Serve | undefined =>
  serve && {
    outcome: serve,
    faults: serve === "doubleFault" ? 2 : faults,
    ...(lets > 0 ? { lets } : {}),
  };

const withEnding = (shot: Shot, ending: Ending, missForced: boolean | undefined): Shot => {
  if (ending.type === "undrawn") return { ...shot, result: "in" };
  if (ending.type !== "missed") return { ...shot, result: ending.type };
  return {
    ...shot,
    result: "missed",
    ...(ending.miss ? { miss: ending.miss } : {}),
    ...(missForced === undefined ? {} : { missForced }),
  };
};

/** The point as it goes into the log, or `undefined` while nobody said who won it. SPEC PD7, PD26. */
export const finishPoint = (draft: PointDraft, frame: PointFrame): Point | undefined => {
  const winner = winnerOf(draft, frame);
  if (winner === undefined) return undefined;
  const ending = endingOf(draft, frame);
  const last = draft.shots.at(-1);
  const serve = serveOf(draft);
  const key = frame.subject !== undefined;
  return {
    winner,
    level: key ? "key" : "every",
    seat: frame.seat,
    endOfA: frame.endOfA,
    ...(serve ? { serve } : {}),
    shots: last && ending ? [...draft.shots.slice(0, -1), withEnding(last, ending, draft.missForced)] : [],
    ...(key && draft.satUpKept !== undefined ? { satUpKept: draft.satUpKept } : {}),
  };
};

/** A point that nobody saw or drew: who won it, and nothing else. */
export const pointNotSeen = (winner: Side, { seat, endOfA }: Pick<PointFrame, "seat" | "endOfA">): Point => ({
  winner,
  level: "score",
  seat,
  endOfA,
  shots: [],
});
