import type { LoggedEntry } from "@courtloom/match-log";
import type { CourtEntries, CourtPage } from "@courtloom/protocol";

/** A match log as far as this mirror has it: dense from pos 1. Incarnation is unknown until a page told it. */
export interface CourtLog {
  readonly incarnation: string | undefined;
  readonly entries: readonly LoggedEntry[];
}

export const emptyCourtLog: CourtLog = { incarnation: undefined, entries: [] };

/** `gap`: the server has more than what is held, so it must be read. */
export interface CourtLogStep {
  readonly log: CourtLog;
  readonly gap: boolean;
}

/** Appends what continues the log (`pos = last + 1`), drops what it has, and stops at a gap. SPEC rule MR6. */
const append = (log: CourtLog, incoming: readonly LoggedEntry[]): CourtLogStep => {
  let last = log.entries.length;
  const fresh: LoggedEntry[] = [];
  for (const entry of incoming) {
    if (entry.pos <= last) continue;
    if (entry.pos !== last + 1) {
      return { log: extended(log, fresh), gap: true };
    }
    fresh.push(entry);
    last = entry.pos;
  }
  return { log: extended(log, fresh), gap: false };
};

const extended = (log: CourtLog, fresh: readonly LoggedEntry[]): CourtLog =>
  fresh.length === 0 ? log : { incarnation: log.incarnation, entries: [...log.entries, ...fresh] };

/**
 * Takes newly committed entries. Before the first page nothing is held, so they count as a gap:
 * the page tells which incarnation is true. Entries of another incarnation drop everything. SPEC rule MR7.
 */
export const takeEntries = (log: CourtLog, message: CourtEntries): CourtLogStep => {
  if (log.incarnation === message.incarnation) return append(log, message.entries);
  return { log: emptyCourtLog, gap: true };
};

/**
 * Takes a page that was read after pos `after`. A page of another incarnation read from the middle
 * cannot be joined to anything: all is dropped and the log is read from the start.
 */
export const takePage = (log: CourtLog, after: number, page: CourtPage): CourtLogStep => {
  const known = log.incarnation === undefined || log.incarnation === page.incarnation;
  if (!known && after > 0) {
    return { log: { incarnation: page.incarnation, entries: [] }, gap: true };
  }
  const base = { incarnation: page.incarnation, entries: known ? log.entries : [] };
  const step = append(base, page.entries);
  const short = step.log.entries.length < page.head;
  return { log: step.log, gap: step.gap || page.more || short };
};
