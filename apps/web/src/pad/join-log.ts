import { type Entry, type LoggedEntry, SECOND_EPOCH } from "@courtloom/match-log";
import type { LaneRecord } from "@courtloom/sync";

/**
 * The match log as this phone sees it: what the server has committed, then this phone's own entries that
 * are not in it yet, in order, at the places that they will have if nobody else writes. Entries that the
 * server will never take stay out, and so does all of a lane that the server never opened: whether it makes
 * the score is not known; a second lane's never do. Empty until the opening is known.
 */
export const joinLog = (
  committed: readonly LoggedEntry[],
  record: LaneRecord,
  own: readonly Entry[],
): readonly LoggedEntry[] => {
  const known = committed.length > 0 ? committed : record.opening ? [record.opening] : [];
  const last = known.at(-1);
  if (!last) return [];
  const ids = new Set(known.map((logged) => logged.entry.id));
  const rejected = new Set(record.rejected.map(({ n }) => n));
  const opened = record.epoch > 0 || record.second === true;
  const waiting = own.filter((entry) => opened && !ids.has(entry.id) && !rejected.has(entry.n));
  const { laneId } = record;
  const epoch = record.second ? SECOND_EPOCH : record.epoch;
  return [...known, ...waiting.map((entry, i) => ({ pos: last.pos + 1 + i, laneId, epoch, entry }))];
};
