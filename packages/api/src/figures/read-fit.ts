import { type AcademyFit, readAcademyFit } from "@courtloom/decisions";
import type { StaffContext } from "../procedure.ts";
import type { FitRow } from "./line-map.ts";

/** The academy's fit with its version. */
export interface ReadFit {
  readonly fit: AcademyFit | undefined;
  /** Null without one, and for one that only a later version of this product can read. */
  readonly row: FitRow | null;
}

/** The newest fit, or the one that a match froze. Nothing fitted yet is no error. */
export const readFit = async ({ store, staff }: StaffContext, version?: number): Promise<ReadFit> => {
  const kept = await store.choiceFit({
    academyId: staff.academyId,
    ...(version === undefined ? {} : { version }),
  });
  const fit = kept && readAcademyFit(kept.fit);
  if (!kept || !fit?.ok) return { fit: undefined, row: null };
  const { players, matches, ownSpread } = fit.value;
  return {
    fit: fit.value,
    row: { version: kept.version, fittedMs: kept.fittedMs, players, matches, ownSpread },
  };
};
