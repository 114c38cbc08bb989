import type { Point, Shot } from "@courtloom/match-log";
import { EMPTY_DRAFT, type Ending, isServeIn, type PointDraft } from "./point-draft.ts";

const saidOf = ({ level, winner, serve, shots }: Point): Ending | undefined => {
  const last = shots.at(-1);
  const wentOn = last ? last.result === "in" : isServeIn(serve ? { serve: serve.outcome } : {});
  if (level === "key" && wentOn) return { type: "undrawn", winner };
  if (last?.result === "missed") return { type: "missed", ...(last.miss ? { miss: last.miss } : {}) };
  return last?.result === "winner" || last?.result === "forced" ? { type: last.result } : undefined;
};

const withoutResult = ({ result: _, miss: __, missForced: ___, ...shot }: Shot): Shot => shot;

/** A charted point as a draft again, so that taking it back does not throw its drawings away. Inverse of `finishPoint`. */
export const reopenPoint = (point: Point): PointDraft => {
  const { serve, shots, satUpKept } = point;
  const last = shots.at(-1);
  const said = saidOf(point);
  return {
    ...EMPTY_DRAFT,
    faults: serve && serve.faults > 0 ? 1 : 0,
    lets: serve?.lets ?? 0,
    ...(serve ? { serve: serve.outcome } : {}),
    shots: shots.map(withoutResult),
    ...(said ? { said } : {}),
    ...(last?.missForced === undefined ? {} : { missForced: last.missForced }),
    ...(satUpKept === undefined ? {} : { satUpKept }),
  };
};
