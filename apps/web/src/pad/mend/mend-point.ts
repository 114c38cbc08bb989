import type { Side } from "@courtloom/core";
import type { EntryBody, LeftOut, Point } from "@courtloom/match-log";
import { reduceDraft } from "../draft-reducer.ts";
import { finishPoint } from "../finish-point.ts";
import type { PointFrame } from "../point-draft.ts";
import { reopenPoint } from "../reopen-point.ts";

/** A charted point that is to be put right, by the id of the entry that charted it. */
export interface PointToMend {
  readonly id: string;
  readonly point: Point;
}

/** The point as it is said anew. */
export const pointMended = ({ id }: Pick<PointToMend, "id">, point: Point): EntryBody => ({
  kind: "EntryAmended",
  target: id,
  to: { kind: "PointCharted", point },
});

/** A point of which nothing but the winner is known went to the other player. */
export const winnerMended = ({ id, point }: PointToMend, winner: Side): EntryBody =>
  pointMended({ id }, { ...point, winner });

/** Who alone says who won: nothing else of the point was charted. */
export const isWinnerAlone = ({ shots, serve }: Point): boolean => shots.length === 0 && serve === undefined;

/**
 * The net cord decided the last ball, or it was called out and seen in: as if it had been charted so, so that a
 * ball that was called out goes against its striker. `undefined` where no ball was drawn. SPEC PD87.
 */
export const lastBallLeftOut = (
  { id, point }: PointToMend,
  leftOut: LeftOut,
  frame: PointFrame,
): EntryBody | undefined => {
  if (point.shots.length === 0) return undefined;
  const state = { draft: reopenPoint(point), past: [], redrawing: false };
  const { draft } = reduceDraft(state, { type: "leftOutChosen", reason: leftOut });
  const finished = finishPoint(draft, frame);
  return finished && pointMended({ id }, finished);
};

/** Who won stays; the rest was not seen. */
export const madeNotSeen = ({ id, point }: PointToMend): EntryBody => {
  const { winner, seat, endOfA } = point;
  return pointMended({ id }, { winner, level: "score", seat, endOfA, shots: [] });
};

/** A point that nobody charted, before another one; seen from where that one was. */
export const pointPutIn = (before: PointToMend, winner: Side): EntryBody => {
  const { seat, endOfA } = before.point;
  const point: Point = { winner, level: "score", seat, endOfA, shots: [] };
  return { kind: "EntryInserted", before: before.id, fact: { kind: "PointCharted", point } };
};
