import {
  type BoardHeard,
  type BoardSnapshot,
  type BoardTile,
  type BoardView,
  DOWN,
  type Heard,
} from "@courtloom/protocol";
import type { StoredAlert } from "../alerts/alert-store.ts";
import { tileAlertsOf } from "../alerts/tile-alerts.ts";
import type { Runtime } from "../runtime.ts";
import type { CourtCard, DayBoard, DayStore, MatchRef } from "../store.ts";
import type { Viewer } from "../viewer.ts";
import type { HeardBook } from "./heard-book.ts";
import type { MatchRoom } from "./match-room.ts";
import { createPauseBook } from "./pause-book.ts";
import { type StaffRole, tileOf } from "./tile.ts";
import { createThrottle } from "./tile-throttle.ts";

export interface BoardDeps {
  readonly runtime: Runtime;
  readonly days: DayStore;
  readonly heard: HeardBook;
  readonly matchRoom: (match: MatchRef) => MatchRoom;
  /** The alerts of a match that were raised so far, as far as this node knows. */
  readonly alertsOf: (match: MatchRef) => readonly StoredAlert[];
}

/** All courts of one day on this node. SPEC LV7 to LV11. */
export interface BoardRoom {
  readonly academyId: string;
  readonly dayId: string;
  /** Reads the day again, follows each court's current match, and marks what changed. Rejects when it cannot. */
  readonly refresh: () => Promise<void>;
  /** Subscribes while `still` holds; what changes after the snapshot is sent. `role` of who looks; default coach. Undefined when the academy has no such day. */
  readonly watch: (
    viewer: Viewer,
    view: BoardView,
    still: () => boolean,
    role?: StaffRole,
  ) => Promise<BoardSnapshot | undefined>;
  readonly unwatch: (viewer: Viewer) => void;
  /** Something of a match changed that its room does not know of. */
  readonly touchMatch: (matchId: string) => void;
  /** Tells which phones were heard since the last call. */
  readonly sendHeard: () => void;
  readonly isQuiet: () => boolean;
  readonly close: () => void;
}

interface Followed {
  readonly room: MatchRoom;
  readonly stop: () => void;
}

/** A log exists once a match is not waiting any more. */
const isOpened = (court: CourtCard): boolean => court.current !== null && court.current.stage !== "waiting";

export const createBoardRoom = (academyId: string, dayId: string, deps: BoardDeps): BoardRoom => {
  const { runtime, days, heard } = deps;
  const watchers = new Map<Viewer, { readonly view: BoardView; readonly role: StaffRole }>();
  const followed = new Map<string, Followed>();
  const sentHeard = new Map<string, number>();
  const pauses = createPauseBook(runtime.clock);
  let board: DayBoard | undefined;
  let joining = 0;
  let stampedMs = Number.NEGATIVE_INFINITY;

  /** Readers order tiles by this: never the same twice, and never back when the clock is set back. SPEC LV8. */
  const stamp = (): number => {
    stampedMs = Math.max(stampedMs + 1, runtime.clock.wallMs());
    return stampedMs;
  };
  const courtOf = (courtId: string): CourtCard | undefined =>
    board?.courts.find((court) => court.courtId === courtId);
  const factsOf = (court: CourtCard) => {
    const room = followed.get(court.courtId)?.room;
    const matchId = court.current?.matchId;
    const word = matchId === undefined ? undefined : heard.get({ academyId, matchId });
    const seconds = room?.secondChartists() ?? [];
    const view = room?.view();
    const pauseSinceMs = pauses.sinceMs(court.courtId, view);
    const alerts =
      view && matchId !== undefined ? tileAlertsOf(view, deps.alertsOf({ academyId, matchId })) : [];
    return { alerts, court, view, head: room?.head(), seconds, heard: word, pauseSinceMs };
  };
  const send = (courtId: string): void => {
    const court = courtOf(courtId);
    if (!court) return;
    const facts = factsOf(court);
    const serverMs = stamp();
    const made = new Map<string, BoardTile>();
    for (const [viewer, { view, role }] of watchers) {
      const audience = `${view}/${role}`;
      const message = made.get(audience) ?? {
        dayId,
        serverMs,
        tile: tileOf(facts, view, role),
      };
      made.set(audience, message);
      viewer.send(DOWN.boardTile, message);
    }
  };
  const throttle = createThrottle(runtime, send);

  const unfollow = (courtId: string): void => {
    followed.get(courtId)?.stop();
    followed.delete(courtId);
  };
  const follow = (court: CourtCard): void => {
    const matchId = isOpened(court) ? court.current?.matchId : undefined;
    if (followed.get(court.courtId)?.room.ref.matchId === matchId) return;
    unfollow(court.courtId);
    if (matchId === undefined) return;
    const room = deps.matchRoom({ academyId, matchId });
    followed.set(court.courtId, { room, stop: room.onChange(() => throttle.touch(court.courtId)) });
  };
  const readFollowed = async (): Promise<void> => {
    await Promise.all(
      [...followed.values()].map(({ room }) => (room.pos() === 0 ? room.catchUp() : undefined)),
    );
  };
  const refresh = async (): Promise<void> => {
    const next = await days.dayBoard({ academyId, dayId });
    const before = new Map(board?.courts.map((court) => [court.courtId, JSON.stringify(court)]));
    board = next;
    const courts = next?.courts ?? [];
    const ids = new Set(courts.map((court) => court.courtId));
    for (const courtId of [...followed.keys()]) if (!ids.has(courtId)) unfollow(courtId);
    for (const court of courts) follow(court);
    await readFollowed();
    for (const court of courts) {
      if (before.size > 0 && before.get(court.courtId) !== JSON.stringify(court))
        throttle.touch(court.courtId);
    }
  };
  const snapshot = (day: DayBoard, view: BoardView, role: StaffRole): BoardSnapshot => ({
    ok: true,
    dayId,
    dayName: day.day.name,
    academyName: day.academyName,
    timeZone: day.timeZone,
    serverMs: stamp(),
    tiles: day.courts.map((court) => tileOf(factsOf(court), view, role)),
  });
  const newWords = (): readonly Heard[] =>
    (board?.courts ?? []).flatMap(({ current }) => {
      const word = current ? heard.get({ academyId, matchId: current.matchId }) : undefined;
      if (!word || (sentHeard.get(word.matchId) ?? Number.NEGATIVE_INFINITY) >= word.heardMs) return [];
      sentHeard.set(word.matchId, word.heardMs);
      return [{ matchId: word.matchId, heardMs: word.heardMs, unsent: word.unsent }];
    });

  return {
    academyId,
    dayId,
    refresh,
    watch: async (viewer, view, still, role = "coach") => {
      joining += 1;
      try {
        if (!board) await refresh();
        if (!board) return undefined;
        await readFollowed();
        if (still()) watchers.set(viewer, { view, role });
        return snapshot(board, view, role);
      } finally {
        joining -= 1;
      }
    },
    unwatch: (viewer) => void watchers.delete(viewer),
    touchMatch: (matchId) => {
      for (const { courtId, current } of board?.courts ?? [])
        if (current?.matchId === matchId) throttle.touch(courtId);
    },
    sendHeard: () => {
      const words = newWords();
      if (words.length === 0) return;
      const staff: BoardHeard = { dayId, serverMs: runtime.clock.wallMs(), heard: words };
      const wall: BoardHeard = { ...staff, heard: words.map((word) => ({ ...word, unsent: null })) };
      for (const [viewer, { view }] of watchers)
        viewer.send(DOWN.boardHeard, view === "staff" ? staff : wall);
    },
    isQuiet: () => watchers.size === 0 && joining === 0,
    close: () => {
      throttle.stop();
      for (const courtId of [...followed.keys()]) unfollow(courtId);
    },
  };
};
