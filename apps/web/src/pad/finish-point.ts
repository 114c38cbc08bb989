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

const withEnding = (shot: Shot, ending: Ending, missForced: boolean | undefined): Shot =>
  ending.type === "missed"
    ? {
        ...shot,
        result: "missed",
        miss: ending.miss,
        ...(missForced === undefined ? {} : { missForced }),
      }
    : { ...shot, result: ending.type };

/** The point as it goes into the log, or `undefined` while nobody said who won it. */
export const finishPoint = (draft: PointDraft, frame: PointFrame): Point | undefined => {
  const winner = winnerOf(draft, frame);
  if (winner === undefined) return undefined;
  const ending = endingOf(draft, frame);
  const last = draft.shots.at(-1);
  const serve = serveOf(draft);
  return {
    winner,
    level: "every",
    seat: frame.seat,
    endOfA: frame.endOfA,
    ...(serve ? { serve } : {}),
    shots: last && ending ? [...draft.shots.slice(0, -1), withEnding(last, ending, draft.missForced)] : [],
  };
};

/** A point that nobody saw or drew: who won it, and nothing else. */
export const pointNotSeen = (winner: Side, { seat, endOfA }: Omit<PointFrame, "server">): Point => ({
  winner,
  level: "score",
  seat,
  endOfA,
  shots: [],
});
