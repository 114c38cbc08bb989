import type { LoggedEntry, MatchView } from "@courtloom/match-log";
import type { AlertBook } from "../alerts/alert-book.ts";
import type { Runtime } from "../runtime.ts";
import type { DayStore, LogStore, MatchRef } from "../store.ts";
import { type BoardRoom, createBoardRoom } from "./board-room.ts";
import { createMatchRoom } from "./create-match-room.ts";
import type { HeardBook } from "./heard-book.ts";
import type { MatchRoom } from "./match-room.ts";
import { createSettling } from "./settling.ts";

/** A room that nobody used for so long is given up; the next use reads it anew. */
export const ROOM_IDLE_MS = 120_000;

export interface DirectoryDeps {
  readonly runtime: Runtime;
  readonly store: LogStore;
  readonly days: DayStore;
  readonly heard: HeardBook;
  readonly alerts: AlertBook;
}

/** The rooms of this node. */
export interface Directory {
  readonly matchRoom: (match: MatchRef) => MatchRoom;
  readonly findMatch: (match: MatchRef) => MatchRoom | undefined;
  /** Hints name a match without its academy. */
  readonly matchesCalled: (matchId: string) => readonly MatchRoom[];
  readonly matchRooms: () => readonly MatchRoom[];
  readonly boardRoom: (academyId: string, dayId: string) => BoardRoom;
  readonly findBoard: (academyId: string, dayId: string) => BoardRoom | undefined;
  readonly boardRooms: () => readonly BoardRoom[];
  /** Gives up boards that nobody watches and matches that nobody used lately. */
  readonly evict: () => void;
  /** Looks again at what could not be settled. */
  readonly settle: () => void;
}

interface Kept<T> {
  readonly room: T;
  usedMs: number;
}

export const createDirectory = ({ runtime, store, days, heard, alerts }: DirectoryDeps): Directory => {
  const { clock } = runtime;
  const matches = new Map<string, Kept<MatchRoom>>();
  const boards = new Map<string, BoardRoom>();
  const settling = createSettling(days, runtime);
  const keyOf = ({ academyId, matchId }: MatchRef): string => `${academyId}/${matchId}`;
  const deps = {
    runtime,
    store,
    openingOf: days.openingOf,
    heard,
    folded: (match: MatchRef, view: MatchView, entries: readonly LoggedEntry[]): void => {
      settling.look(match, view);
      alerts.look(match, { view, entries });
    },
  };
  const matchRoom = (ref: MatchRef): MatchRoom => {
    const { academyId, matchId } = ref;
    const kept = matches.get(keyOf(ref)) ?? {
      room: createMatchRoom({ academyId, matchId }, deps),
      usedMs: 0,
    };
    kept.usedMs = clock.monotonicMs();
    matches.set(keyOf(ref), kept);
    return kept.room;
  };
  const evictMatches = (): void => {
    const nowMs = clock.monotonicMs();
    for (const [key, { room, usedMs }] of matches) {
      if (!room.isQuiet() || nowMs - usedMs < ROOM_IDLE_MS) continue;
      matches.delete(key);
      heard.forget(room.ref);
      settling.forget(room.ref);
      alerts.forget(room.ref);
    }
  };
  return {
    matchRoom,
    findMatch: (ref) => matches.get(keyOf(ref))?.room,
    matchesCalled: (matchId) =>
      [...matches.values()].map(({ room }) => room).filter((room) => room.ref.matchId === matchId),
    matchRooms: () => [...matches.values()].map(({ room }) => room),
    boardRoom: (academyId, dayId) => {
      const key = `${academyId}/${dayId}`;
      const board =
        boards.get(key) ??
        createBoardRoom(academyId, dayId, { runtime, days, heard, matchRoom, alertsOf: alerts.rowsOf });
      boards.set(key, board);
      return board;
    },
    findBoard: (academyId, dayId) => boards.get(`${academyId}/${dayId}`),
    boardRooms: () => [...boards.values()],
    evict: () => {
      for (const [key, board] of boards) {
        if (!board.isQuiet()) continue;
        board.close();
        boards.delete(key);
      }
      evictMatches();
    },
    settle: () => {
      for (const { room } of matches.values()) {
        const view = room.view();
        if (view) settling.look(room.ref, view);
      }
    },
  };
};
