import type { AlertNotices, Alerts, BoardHeard, BoardTile, CourtEntries, Heard } from "@courtloom/protocol";
import { DOWN } from "@courtloom/protocol";
import type { Viewer } from "./viewer.ts";

/** The wire to one reader. */
export interface Wire {
  readonly emit: (event: string, message: unknown) => void;
  /** Something written before has not left this process yet. */
  readonly isBehind: () => boolean;
}

export interface Outlet extends Viewer {
  /** Call when the wire may be free again. */
  readonly flush: () => void;
}

/**
 * Holds back what a slow reader has no room for, and no more than the latest of each kind: a tile per
 * court, one word per phone, one list of alerts per day, the newest entries per match (the reader sees the gap and
 * reads it). Notices are kept all: each comes once, and they are few. So a
 * reader that stands still costs a fixed amount of memory and is never disconnected. SPEC LV14.
 */
export const createOutlet = (wire: Wire): Outlet => {
  const tiles = new Map<string, BoardTile>();
  const courts = new Map<string, CourtEntries>();
  const heard = new Map<string, { readonly message: BoardHeard; readonly words: Map<string, Heard> }>();

  const lists = new Map<string, Alerts>();
  const notices = new Map<string, AlertNotices>();

  const holdNotices = (message: AlertNotices): void => {
    const before = notices.get(message.dayId)?.notices ?? [];
    notices.set(message.dayId, { ...message, notices: [...before, ...message.notices] });
  };
  const holdHeard = (message: BoardHeard): void => {
    const words = heard.get(message.dayId)?.words ?? new Map<string, Heard>();
    for (const word of message.heard) words.set(word.matchId, word);
    heard.set(message.dayId, { message, words });
  };
  const hold = (event: string, message: unknown): void => {
    if (event === DOWN.boardTile) {
      const tile = message as BoardTile;
      tiles.set(`${tile.dayId}/${tile.tile.courtId}`, tile);
    } else if (event === DOWN.courtEntries) {
      const entries = message as CourtEntries;
      courts.set(entries.matchId, entries);
    } else if (event === DOWN.alerts) {
      const list = message as Alerts;
      lists.set(list.dayId, list);
    } else if (event === DOWN.alertNotices) holdNotices(message as AlertNotices);
    else if (event === DOWN.boardHeard) holdHeard(message as BoardHeard);
  };
  const flush = (): void => {
    if (wire.isBehind()) return;
    const held: [string, unknown][] = [
      ...[...courts.values()].map((message): [string, unknown] => [DOWN.courtEntries, message]),
      ...[...tiles.values()].map((message): [string, unknown] => [DOWN.boardTile, message]),
      ...[...heard.values()].map(({ message, words }): [string, unknown] => [
        DOWN.boardHeard,
        { ...message, heard: [...words.values()] },
      ]),
      ...[...lists.values()].map((message): [string, unknown] => [DOWN.alerts, message]),
      ...[...notices.values()].map((message): [string, unknown] => [DOWN.alertNotices, message]),
    ];
    for (const kept of [courts, tiles, heard, lists, notices]) kept.clear();
    for (const [event, message] of held) wire.emit(event, message);
  };
  return {
    send: (event, message) => {
      if (wire.isBehind()) hold(event, message);
      else wire.emit(event, message);
    },
    flush,
  };
};
