import type { BoardHeard, BoardTile, BoardView, BoardWatchReply, RefusalCode } from "@courtloom/protocol";
import { DOWN, PROTOCOL_VERSION, UP } from "@courtloom/protocol/names";
import type { Channel } from "./channel.ts";
import {
  type BoardState,
  emptyBoard,
  openSession,
  takeHeard,
  takeSnapshot,
  takeTile,
} from "./mirror-board-state.ts";
import { deviceDeps, type MirrorDeps } from "./mirror-court.ts";
import { createLink, type MirrorState, type ReadOutcome } from "./mirror-link.ts";

/** A day's board as this page knows it. `board` and its courts keep their identity while they do not change. */
export interface BoardMirrorSnapshot {
  readonly state: MirrorState;
  readonly board: BoardState;
  /** Device wall clock when the server was last heard; null when never. */
  readonly lastHeardMs: number | null;
  readonly refusal: RefusalCode | null;
  /** False while there is no connection. */
  readonly reachable: boolean;
}

export interface BoardMirror {
  readonly get: () => BoardMirrorSnapshot;
  /** The server's clock now, in ms since 1970, as well as this device can tell. */
  readonly serverNowMs: () => number;
  readonly subscribe: (changed: () => void) => () => void;
  /** Called only when this court became another one, came or went; with many courts a listener to all is called for each. */
  readonly subscribeCourt: (courtId: string, changed: () => void) => () => void;
  readonly close: () => void;
}

/**
 * Follows every court of a day. Takes the snapshot, then the changes; watches again after a reconnect and
 * when the server is silent, and says `stale` once what is shown is the past. SPEC rules MR9 to MR12.
 */
export const createBoardMirror = (
  channel: Channel,
  dayId: string,
  view: BoardView,
  deps: MirrorDeps = deviceDeps,
): BoardMirror => {
  const listeners = new Set<() => void>();
  const courtListeners = new Map<string, Set<() => void>>();
  let board = emptyBoard;
  let snapshot: BoardMirrorSnapshot;

  const publish = () => {
    snapshot = {
      state: link.state(),
      board,
      lastHeardMs: link.lastHeardMs(),
      refusal: link.refusal(),
      reachable: link.reachable(),
    };
    for (const listener of listeners) listener();
  };
  const publishCourts = (before: BoardState) => {
    for (const [courtId, told] of courtListeners) {
      if (before.courts.get(courtId) === board.courts.get(courtId)) continue;
      for (const listener of told) listener();
    }
  };
  const take = (next: BoardState) => {
    if (next === board) return;
    const before = board;
    board = next;
    publish();
    publishCourts(before);
  };
  const read = async (fresh: boolean): Promise<ReadOutcome> => {
    if (fresh) board = openSession(board);
    const asked = board.session;
    const reply = await channel.request<BoardWatchReply>(UP.boardWatch, { v: PROTOCOL_VERSION, dayId, view });
    if (!reply.ok) return reply;
    if (asked === board.session) take(takeSnapshot(board, reply, deps.clock.monotonicMs()));
    return "read";
  };
  const link = createLink({ channel, ...deps, read, changed: () => publish() });
  const listen = <M extends { readonly dayId: string }>(
    event: string,
    step: (board: BoardState, message: M, monotonicMs: number) => BoardState,
  ) =>
    channel.on(event, (raw) => {
      const message = raw as M;
      if (message.dayId !== dayId) return;
      take(step(board, message, deps.clock.monotonicMs()));
      link.heard();
    });
  const stops = [listen<BoardTile>(DOWN.boardTile, takeTile), listen<BoardHeard>(DOWN.boardHeard, takeHeard)];
  publish();
  link.start();

  return {
    get: () => snapshot,
    serverNowMs: () => deps.clock.monotonicMs() + board.offsetMs,
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    subscribeCourt: (courtId, changed) => {
      const told = courtListeners.get(courtId) ?? new Set();
      courtListeners.set(courtId, told.add(changed));
      return () => told.delete(changed);
    },
    close: () => {
      for (const stop of stops) stop();
      link.close();
      void channel.request(UP.boardLeave, { v: PROTOCOL_VERSION, id: dayId });
    },
  };
};
