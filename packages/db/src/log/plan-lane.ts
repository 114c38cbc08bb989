import { err, ok, type Result } from "@courtloom/core";
import { SECOND_EPOCH } from "@courtloom/match-log";
import type { LaneOwner, LeadLane, OpenLane, OpenLaneRefused } from "../entry-store.ts";

/** What the store holds about a match when a lane is opened, under the match's lock. */
export interface MatchSoFar {
  readonly epoch: number;
  readonly sealed: boolean;
  readonly lead: LeadLane | undefined;
  /** The lane itself, if it exists. */
  readonly lane:
    | { readonly owner: { readonly kind: string; readonly id: string }; readonly epoch: number }
    | undefined;
}

/**
 * `start`: a new lane, with the lead from `epoch` on; `takesOver` from another one. `second`: a new lane beside
 * the score.
 */
export type LanePlan =
  | { readonly kind: "resume"; readonly epoch: number; readonly lead: LeadLane | undefined }
  | { readonly kind: "second"; readonly epoch: number; readonly lead: LeadLane | undefined }
  | { readonly kind: "start"; readonly epoch: number; readonly lead: LeadLane; readonly takesOver: boolean };

/** Rules ES2, ES3, ES17 and ES30. */
export function planLane(open: OpenLane, match: MatchSoFar): Result<LanePlan, OpenLaneRefused> {
  const { laneId, chartist, owner } = open;
  const own: LeadLane = { laneId, chartist, owner };
  const { lead } = match;
  if (match.lane) {
    if (!mayResume(match.lane.owner, owner)) return err({ code: "other_owner" });
    return ok({ kind: "resume", epoch: match.lane.epoch, lead: lead?.laneId === laneId ? own : lead });
  }
  if (match.sealed) return err({ code: "sealed" });
  if (open.second) return ok({ kind: "second", epoch: SECOND_EPOCH, lead });
  if (lead && lead.laneId !== open.takeOver) return err({ code: "lead_taken", lead });
  return ok({ kind: "start", epoch: match.epoch + 1, lead: own, takesOver: lead !== undefined });
}

/**
 * A courtside session that ran out is replaced by another one of the same court on the same phone; its
 * unsent entries must still find their lane. Members' lanes are theirs alone.
 */
const mayResume = (had: { readonly kind: string; readonly id: string }, asks: LaneOwner): boolean =>
  had.kind === asks.kind && (had.kind === "courtside" || had.id === asks.id);
