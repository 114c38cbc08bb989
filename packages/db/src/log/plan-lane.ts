import { err, ok, type Result } from "@courtloom/core";
import type { LaneOwner, OpenLane, OpenLaneRefused } from "../entry-store.ts";

/** What the store holds about a match when a lane is opened, under the match's lock. */
export interface MatchSoFar {
  readonly epoch: number;
  readonly sealed: boolean;
  readonly lead: { readonly laneId: string; readonly chartist: string } | undefined;
  /** The lane itself, if it exists. */
  readonly lane: { readonly owner: { readonly kind: string; readonly id: string } } | undefined;
}

/** `start`: a new lane, with the lead from `epoch` on. */
export type LanePlan = { readonly kind: "resume" } | { readonly kind: "start"; readonly epoch: number };

/** Rules ES2 and ES3. */
export function planLane(open: OpenLane, match: MatchSoFar): Result<LanePlan, OpenLaneRefused> {
  if (match.lane) {
    return mayResume(match.lane.owner, open.owner) ? ok({ kind: "resume" }) : err({ code: "other_owner" });
  }
  if (match.sealed) return err({ code: "sealed" });
  if (match.lead) {
    return err({ code: "lead_taken", by: match.lead.chartist, laneId: match.lead.laneId });
  }
  return ok({ kind: "start", epoch: match.epoch + 1 });
}

/**
 * A courtside session that ran out is replaced by another one of the same court on the same phone; its
 * unsent entries must still find their lane. Members' lanes are theirs alone.
 */
const mayResume = (had: { readonly kind: string; readonly id: string }, asks: LaneOwner): boolean =>
  had.kind === asks.kind && (had.kind === "courtside" || had.id === asks.id);
