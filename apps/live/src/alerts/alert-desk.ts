import type { Directory } from "../rooms/directory.ts";
import type { Runtime } from "../runtime.ts";
import type { LogStore, MatchCard, MatchRef } from "../store.ts";
import { createTtlCache } from "../ttl-cache.ts";
import type { AlertBook } from "./alert-book.ts";
import { type AlertRoom, createAlertRoom } from "./alert-room.ts";
import type { AlertStore, MembersOf } from "./alert-store.ts";
import { createDescribeDay } from "./describe-day.ts";

/** The alerts of this node's days, and where marks are written. */
export interface AlertDesk {
  readonly store: AlertStore;
  readonly membersOf: MembersOf;
  readonly room: (academyId: string, dayId: string) => AlertRoom;
  /** The alerts of a day became others. */
  readonly touch: (academyId: string, dayId: string) => void;
  /** What other nodes wrote, and what could not be written. Call it every two seconds. SPEC AL18. */
  readonly tick: () => Promise<void>;
  /** Gives up days that nobody follows. */
  readonly evict: () => void;
}

export interface AlertDeskDeps {
  readonly runtime: Runtime;
  readonly store: AlertStore;
  readonly logs: Pick<LogStore, "lanes">;
  readonly membersOf: MembersOf;
  readonly matchCard: (match: MatchRef) => Promise<MatchCard | undefined>;
  readonly directory: Directory;
  readonly book: AlertBook;
}

/** How old a name may be. */
const NAMES_TTL_MS = 10_000;

export const createAlertDesk = (deps: AlertDeskDeps): AlertDesk => {
  const { runtime, store, logs, directory, book } = deps;
  const rooms = new Map<string, AlertRoom>();
  const members = createTtlCache<Awaited<ReturnType<MembersOf>>>(runtime.clock, NAMES_TTL_MS);
  const lanes = createTtlCache<ReadonlyMap<string, string>>(runtime.clock, NAMES_TTL_MS);

  const membersOf: MembersOf = (academy) => members.get(academy.academyId, () => deps.membersOf(academy));
  const lanesOf = async (match: MatchRef): Promise<ReadonlyMap<string, string>> => {
    const read = await logs.lanes(match);
    return new Map(read.ok ? read.value.map(({ laneId, chartist }) => [laneId, chartist]) : []);
  };
  const describe = createDescribeDay({
    membersOf,
    matchCard: deps.matchCard,
    chartistOf: async (match, laneId) =>
      (await lanes.get(`${match.academyId}/${match.matchId}`, () => lanesOf(match))).get(laneId),
  });
  const room = (academyId: string, dayId: string): AlertRoom => {
    const key = `${academyId}/${dayId}`;
    const board = directory.boardRoom(academyId, dayId);
    const kept =
      rooms.get(key) ??
      createAlertRoom(academyId, dayId, { runtime, store, board, membersOf, describe, learn: book.learn });
    rooms.set(key, kept);
    return kept;
  };
  book.onChange(({ academyId, matchId }) => {
    for (const each of rooms.values()) if (each.academyId === academyId) each.touch();
    for (const board of directory.boardRooms()) if (board.academyId === academyId) board.touchMatch(matchId);
  });
  return {
    store,
    membersOf,
    room,
    touch: (academyId, dayId) => rooms.get(`${academyId}/${dayId}`)?.touch(),
    tick: async () => {
      book.retry();
      await Promise.all([...rooms.values()].filter((each) => !each.isQuiet()).map((each) => each.refresh()));
    },
    evict: () => {
      for (const [key, each] of rooms) {
        if (!each.isQuiet()) continue;
        each.close();
        rooms.delete(key);
      }
    },
  };
};
