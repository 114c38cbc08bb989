import type { LaneRecord } from "./lane-record.ts";

/** Acknowledged entries stay this long after the match was sealed, so that a restored server can be refilled. */
export const KEEP_AFTER_SEAL_MS = 14 * 24 * 60 * 60 * 1000;

/**
 * True when a lane may be deleted. A lane with anything unsent never may; one that was continued by
 * another counts as sent, because the other lane carries its unsent entries.
 */
export const isSwept = (record: LaneRecord, entryCount: number, wallMs: number): boolean => {
  if (record.sealedWallMs === undefined) return false;
  const sent = record.acked >= entryCount || record.continuedBy !== undefined;
  return sent && wallMs - record.sealedWallMs >= KEEP_AFTER_SEAL_MS;
};
