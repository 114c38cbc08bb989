import type { Principal } from "@courtloom/core";
import type { LaneOwner, LeadLane } from "./store.ts";

/** A lead that was not heard for so long may be replaced by whoever else may chart the match. */
export const TAKE_OVER_AFTER_MS = 30_000;

const isStaff = (principal: Principal): boolean =>
  principal.kind === "account" && (principal.role === "director" || principal.role === "coach");

/** The lead was handed to somebody with a code, who may take it until then. */
export interface HandedLead {
  readonly untilMs: number;
}

/** Whether a hand-over still holds. SPEC LV32. */
export const isHanded = (handed: HandedLead | undefined, nowMs: number): boolean =>
  handed !== undefined && nowMs < handed.untilMs;

/**
 * In how many ms a person may take over from `lead`, which was not heard for `silentMs`, if it stays silent;
 * 0: now. Staff may at any time, and so may who leads already, as their phone may have lost its storage.
 * The lead never lapses by time alone: a person has to ask. SPEC LV29.
 */
export const takeOverInMs = (
  principal: Principal,
  asks: LaneOwner,
  lead: LeadLane,
  silentMs: number,
): number => {
  const isOwn = lead.owner.kind === asks.kind && lead.owner.id === asks.id;
  return isStaff(principal) || isOwn ? 0 : Math.max(0, TAKE_OVER_AFTER_MS - silentMs);
};
