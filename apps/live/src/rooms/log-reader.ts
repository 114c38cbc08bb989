import { err, ok, type Result } from "@courtloom/core";
import type { LoggedEntry } from "@courtloom/match-log";
import { MAX_READ_ENTRIES } from "@courtloom/protocol";
import type { Runtime } from "../runtime.ts";
import type { LogStore, MatchRef, Unavailable } from "../store.ts";
import { continuing, emptyRoomLog, extendLog, type RoomLog } from "./room-log.ts";

/** A match's log as this node has read it, and the only hand that changes it. */
export interface LogReader {
  readonly log: () => RoomLog;
  /** Undefined until it was asked for, and after `forget`. */
  readonly incarnation: () => string | undefined;
  /** Takes what continues the log; true when something is missing before the rest. */
  readonly absorb: (incoming: readonly LoggedEntry[]) => boolean;
  /** Reads from the store to its end. A match without an opening has nothing to read. */
  readonly readOn: () => Promise<Result<void, Unavailable>>;
  readonly forget: () => void;
}

export interface LogReaderOptions {
  readonly ref: MatchRef;
  readonly store: LogStore;
  readonly runtime: Runtime;
  /** Newly taken entries, dense, already folded. */
  readonly took: (fresh: readonly LoggedEntry[]) => void;
}

export const createLogReader = ({ ref, store, runtime, took }: LogReaderOptions): LogReader => {
  let log = emptyRoomLog;
  let incarnation: string | undefined;

  const absorb = (incoming: readonly LoggedEntry[]): boolean => {
    const { fresh, gap } = continuing(log.entries.length, incoming);
    if (fresh.length === 0) return gap;
    log = extendLog(log, fresh, ref.matchId, runtime.log);
    took(fresh);
    return gap;
  };
  const identify = async (): Promise<Result<void, Unavailable>> => {
    if (incarnation !== undefined) return ok(undefined);
    const now = await store.incarnation();
    if (now.ok) incarnation = now.value;
    return now.ok ? ok(undefined) : now;
  };
  const readOn = async (): Promise<Result<void, Unavailable>> => {
    const identified = await identify();
    if (!identified.ok) return identified;
    for (;;) {
      const after = log.entries.length;
      const page = await store.read({ ...ref, after, limit: MAX_READ_ENTRIES });
      if (!page.ok) return page.error.code === "unavailable" ? err({ code: "unavailable" }) : ok(undefined);
      absorb(page.value.entries);
      if (log.entries.length === after || log.entries.length >= page.value.head) return ok(undefined);
    }
  };
  return {
    log: () => log,
    incarnation: () => incarnation,
    absorb,
    readOn,
    forget: () => {
      log = emptyRoomLog;
      incarnation = undefined;
    },
  };
};
