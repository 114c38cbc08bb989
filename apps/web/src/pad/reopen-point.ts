import type { Point, Shot } from "@courtloom/match-log";
import { EMPTY_DRAFT, type Ending, type PointDraft } from "./point-draft.ts";

const saidOf = (shot: Shot | undefined): Ending | undefined => {
  if (shot?.result === "missed" && shot.miss) return { type: "missed", miss: shot.miss };
  return shot?.result === "winner" || shot?.result === "forced" ? { type: shot.result } : undefined;
};

const withoutResult = ({ result: _, miss: __, missForced: ___, ...shot }: Shot): Shot => shot;

/** A charted point as a draft again, so that taking it back does not throw its drawings away. Inverse of `finishPoint`. */
export const reopenPoint = ({ serve, shots }: Point): PointDraft => {
  const last = shots.at(-1);
  const said = saidOf(last);
  return {
    ...EMPTY_DRAFT,
    faults: serve && serve.faults > 0 ? 1 : 0,
    lets: serve?.lets ?? 0,
    ...(serve ? { serve: serve.outcome } : {}),
    shots: shots.map(withoutResult),
    ...(said ? { said } : {}),
    ...(last?.missForced === undefined ? {} : { missForced: last.missForced }),
  };
};
