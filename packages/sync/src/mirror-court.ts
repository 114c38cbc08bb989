import type { Clock } from "@courtloom/core";
import { applyEntry, foldLog, type LoggedEntry, type MatchView } from "@courtloom/match-log";
import type { CourtEntries, CourtWatchReply, RefusalCode } from "@courtloom/protocol";
import { DOWN, PROTOCOL_VERSION, UP } from "@courtloom/protocol/names";
import type { Channel } from "./channel.ts";
import {
  type CourtLog,
  type CourtLogStep,
  emptyCourtLog,
  takeEntries,
  takePage,
} from "./mirror-court-log.ts";
import { createLink, type MirrorState, type ReadOutcome } from "./mirror-link.ts";
import { deviceTimers, mirrorClock, type Timers } from "./mirror-timers.ts";

/** One match as this page knows it. Members keep their identity while they do not change. */
export interface CourtSnapshot {
  readonly state: MirrorState;
  /** Undefined until the opening was read. */
  readonly view: MatchView | undefined;
  /** Dense from pos 1. */
  readonly entries: readonly LoggedEntry[];
  /** Device wall clock when the server was last heard; null when never. */
  readonly lastHeardMs: number | null;
  readonly refusal: RefusalCode | null;
  /** False while there is no connection. */
  readonly reachable: boolean;
}

export interface CourtMirror {
  readonly get: () => CourtSnapshot;
  readonly subscribe: (changed: () => void) => () => void;
  readonly close: () => void;
}

export interface MirrorDeps {
  readonly clock: Clock;
  readonly timers: Timers;
}

export interface CourtMirrorOptions extends Partial<MirrorDeps> {
  /** The court's page follows the match; without it a pad does, which is sent less. */
  readonly screen?: "court";
}

export const deviceDeps: MirrorDeps = { clock: mirrorClock, timers: deviceTimers };

/** Continuing costs a copy of the view per entry, so more than a few at once are folded anew. */
const FOLD_ANEW_FROM = 4;

/** The view of `after`, continued from `before` where that is cheaper. A log that cannot be folded has no view. */
const foldOn = (before: CourtLog, view: MatchView | undefined, after: CourtLog): MatchView | undefined => {
  const fresh = after.entries.slice(before.entries.length);
  const continues = view !== undefined && before.incarnation === after.incarnation;
  if (continues && fresh.length < FOLD_ANEW_FROM) return fresh.reduce(applyEntry, view);
  const folded = foldLog(after.entries);
  return folded.ok ? folded.value : undefined;
};

/**
 * Follows one match: subscribes first, then reads the backlog, and applies only what comes next in
 * order; anything missed is read. Equal to the fold of the server's log once nothing is under way.
 * SPEC rules MR5 to MR8.
 */
export const createCourtMirror = (
  channel: Channel,
  matchId: string,
  { screen, ...given }: CourtMirrorOptions = {},
): CourtMirror => {
  const deps: MirrorDeps = { ...deviceDeps, ...given };
  const listeners = new Set<() => void>();
  let log = emptyCourtLog;
  let view: MatchView | undefined;
  let snapshot: CourtSnapshot;

  const publish = () => {
    snapshot = {
      state: link.state(),
      view,
      entries: log.entries,
      lastHeardMs: link.lastHeardMs(),
      refusal: link.refusal(),
      reachable: link.reachable(),
    };
    for (const listener of listeners) listener();
  };
  const take = (step: CourtLogStep): void => {
    if (step.log === log) return;
    view = foldOn(log, view, step.log);
    log = step.log;
    publish();
  };
  const read = async (fresh: boolean): Promise<ReadOutcome> => {
    const after = log.entries.length;
    const message = { v: PROTOCOL_VERSION, matchId, after, ...(screen ? { screen } : {}) };
    const reply = await channel.request<CourtWatchReply>(fresh ? UP.courtWatch : UP.courtRead, message);
    if (!reply.ok) return reply;
    const step = takePage(log, after, reply);
    const progress = step.log.entries.length !== after || step.log.incarnation !== log.incarnation;
    take(step);
    if (!step.gap) return "read";
    return progress ? "more" : "wait";
  };
  const link = createLink({ channel, ...deps, read, changed: () => publish() });
  const stopEntries = channel.on(DOWN.courtEntries, (raw) => {
    const message = raw as CourtEntries;
    if (message.matchId !== matchId) return;
    const step = takeEntries(log, message);
    take(step);
    link.heard();
    if (step.gap) link.ask();
  });
  publish();
  link.start();

  return {
    get: () => snapshot,
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    close: () => {
      stopEntries();
      link.close();
      void channel.request(UP.courtLeave, { v: PROTOCOL_VERSION, id: matchId });
    },
  };
};
