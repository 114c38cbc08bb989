import type { Side } from "@courtloom/core";
import type { EntryBody, LeftOut, Point } from "@courtloom/match-log";
import { type EndSeen, turnEnds } from "@courtloom/tennis";

/** A charted point that is to be put right, by the id of the entry that charted it. */
export interface PointToMend {
  readonly id: string;
  readonly point: Point;
}

const amended = (id: string, point: Point): EntryBody => ({
  kind: "EntryAmended",
  target: id,
  to: { kind: "PointCharted", point },
});

/** The point went to the other player; how it ended is then not known any more, so its balls keep no result. */
export const winnerMended = ({ id, point }: PointToMend, winner: Side): EntryBody => {
  const shots = point.shots.map(({ result: _, miss: __, missForced: ___, ...shot }) => shot);
  const { serve, ...rest } = point;
  // An ace or a double fault says who won; the other winner says that it was neither.
  const decided = serve?.outcome === "ace" || serve?.outcome === "doubleFault";
  return amended(id, { ...rest, ...(serve && !decided ? { serve } : {}), shots, winner });
};

/** The net cord decided the last ball, or it was called out and seen in: the score counts it and no figure does. */
export const lastBallLeftOut = ({ id, point }: PointToMend, leftOut: LeftOut): EntryBody => {
  const shots = point.shots.map((shot, i) => (i === point.shots.length - 1 ? { ...shot, leftOut } : shot));
  return amended(id, { ...point, shots });
};

/** Who won stays; the rest was not seen. */
export const madeNotSeen = ({ id, point }: PointToMend): EntryBody => {
  const { winner, seat, endOfA } = point;
  return amended(id, { winner, level: "score", seat, endOfA, shots: [] });
};

export const pointMended = ({ id }: Pick<PointToMend, "id">, point: Point): EntryBody => amended(id, point);

/** A point that nobody charted, before another one; seen from where that one was. */
export const pointPutIn = (before: PointToMend, winner: Side): EntryBody => {
  const { seat, endOfA } = before.point;
  const point: Point = { winner, level: "score", seat, endOfA, shots: [] };
  return { kind: "EntryInserted", before: before.id, fact: { kind: "PointCharted", point } };
};

export const takenOut = (id: string): EntryBody => ({ kind: "EntryVoided", target: id });

export const putBack = (id: string): EntryBody => ({ kind: "EntryRestored", target: id });

/** Who served since a point was written down wrongly. */
export const serverSince = (id: string, to: Side): EntryBody => ({
  kind: "EntryInserted",
  before: id,
  fact: { kind: "ServerStated", to, slip: "chartist" },
});

/** Ends were seen wrongly from a point on; `endNow` is side A's end as it is shown now. */
export const endsSince = (id: string, endNow: EndSeen): EntryBody => ({
  kind: "EndsStated",
  endOfA: turnEnds(endNow),
  since: id,
});
