import { applyEntry, foldLog, type LoggedEntry, type MatchView } from "@courtloom/match-log";
import type { Log } from "../runtime.ts";

/** A room's copy of a match log: dense from pos 1, with its fold. */
export interface RoomLog {
  readonly entries: readonly LoggedEntry[];
  /** Undefined before the opening, and when the log cannot be folded. */
  readonly view: MatchView | undefined;
}

export const emptyRoomLog: RoomLog = { entries: [], view: undefined };

/** Entries of `incoming` that continue a log of `last` entries, and whether one is missing before the rest. */
export const continuing = (
  last: number,
  incoming: readonly LoggedEntry[],
): { readonly fresh: readonly LoggedEntry[]; readonly gap: boolean } => {
  const fresh: LoggedEntry[] = [];
  for (const entry of incoming) {
    const next = last + fresh.length + 1;
    if (entry.pos < next) continue;
    if (entry.pos > next) return { fresh, gap: true };
    fresh.push(entry);
  }
  return { fresh, gap: false };
};

/** Above so many new entries one fold over all costs less than going on entry by entry. */
const FOLD_WHOLE = 50;

const fold = (
  before: RoomLog,
  entries: readonly LoggedEntry[],
  fresh: readonly LoggedEntry[],
): MatchView | undefined => {
  if (before.view && fresh.length < FOLD_WHOLE) return fresh.reduce(applyEntry, before.view);
  const folded = foldLog(entries);
  return folded.ok ? folded.value : undefined;
};

/** The log with `fresh` added. A fold that fails is a fault to mend; the entries still go on to readers. */
export const extendLog = (
  before: RoomLog,
  fresh: readonly LoggedEntry[],
  matchId: string,
  log: Log,
): RoomLog => {
  const entries = [...before.entries, ...fresh];
  try {
    return { entries, view: fold(before, entries, fresh) };
  } catch (error) {
    log.fault("a match log could not be folded", { matchId, pos: entries.length, error });
    return { entries, view: undefined };
  }
};
