import type { BoardCourt, BoardMirror, BoardMirrorSnapshot } from "@courtloom/sync";
import { createContext, useCallback, useContext, useSyncExternalStore } from "react";
import { countDay, type DayCounts } from "./day-counts.ts";
import { type Freshness, freshnessOf } from "./freshness.ts";
import { secondTicker } from "./second-ticker.ts";

/** The mirror that everything on a board reads from. */
export const BoardMirrorContext = createContext<BoardMirror | null>(null);

export const useBoardMirror = (): BoardMirror => {
  const mirror = useContext(BoardMirrorContext);
  if (mirror === null) throw new Error("bug: a part of the board is outside of it");
  return mirror;
};

/**
 * A value picked from the board's mirror. The component is drawn again only when the picked value is
 * another one, so `pick` must answer something of lasting identity.
 */
export const useBoard = <T>(pick: (snapshot: BoardMirrorSnapshot) => T): T => {
  const mirror = useBoardMirror();
  const read = () => pick(mirror.get());
  return useSyncExternalStore(mirror.subscribe, read, read);
};

export const useBoardCourt = (courtId: string): BoardCourt | undefined =>
  useBoard((snapshot) => snapshot.board.courts.get(courtId));

/** True while what is shown is the past. */
export const useIsStale = (): boolean => useBoard((snapshot) => snapshot.state === "stale");

/** A value that time changes as well as the mirror: a string or a number, so that it is compared by value. */
export const useTicking = <T extends string | number>(read: () => T): T => {
  const mirror = useBoardMirror();
  const subscribe = useCallback(
    (changed: () => void) => {
      const stops = [mirror.subscribe(changed), secondTicker.subscribe(changed)];
      return () => {
        for (const stop of stops) stop();
      };
    },
    [mirror],
  );
  return useSyncExternalStore(subscribe, read, read);
};

const freshnessNow = (mirror: BoardMirror, courtId: string): Freshness => {
  const court = mirror.get().board.courts.get(courtId);
  if (!court) return { kind: "none" };
  return freshnessOf(court.tile.state, court.heard, mirror.serverNowMs());
};

/** A court's freshness, drawn again every second. */
export const useFreshness = (courtId: string): Freshness => {
  const mirror = useBoardMirror();
  useTicking(() => JSON.stringify(freshnessNow(mirror, courtId)));
  return freshnessNow(mirror, courtId);
};

/** The kind of a court's freshness, drawn again only when the kind changes. */
export const useFreshnessKind = (courtId: string): Freshness["kind"] => {
  const mirror = useBoardMirror();
  return useTicking(() => freshnessNow(mirror, courtId).kind);
};

/** How many courts are at what, drawn again only when a count changes. */
export const useDayCounts = (): DayCounts => {
  const mirror = useBoardMirror();
  const read = (): DayCounts =>
    countDay(
      [...mirror.get().board.courts].map(([courtId, { tile }]) => ({
        state: tile.state,
        freshness: freshnessNow(mirror, courtId).kind,
      })),
    );
  useTicking(() => JSON.stringify(read()));
  return read();
};
