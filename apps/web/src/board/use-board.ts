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

/** One court, drawn again when it changes and for no other. SPEC rule BD50. */
export const useBoardCourt = (courtId: string): BoardCourt | undefined => {
  const mirror = useBoardMirror();
  const subscribe = useCallback(
    (changed: () => void) => mirror.subscribeCourt(courtId, changed),
    [mirror, courtId],
  );
  const read = () => mirror.get().board.courts.get(courtId);
  return useSyncExternalStore(subscribe, read, read);
};

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

/** A value that time alone changes, looked at once a second. */
export const useEachSecond = <T extends string | number>(read: () => T): T =>
  useSyncExternalStore(secondTicker.subscribe, read, read);

const freshnessNow = (mirror: BoardMirror, courtId: string): Freshness => {
  const court = mirror.get().board.courts.get(courtId);
  if (!court) return { kind: "none" };
  return freshnessOf(court.tile.state, court.heard, mirror.serverNowMs());
};

/** A value of one court that time changes as well: a string or a number, so that it is compared by value. */
export const useCourtTicking = <T extends string | number>(courtId: string, read: () => T): T => {
  const mirror = useBoardMirror();
  const subscribe = useCallback(
    (changed: () => void) => {
      const stops = [mirror.subscribeCourt(courtId, changed), secondTicker.subscribe(changed)];
      return () => {
        for (const stop of stops) stop();
      };
    },
    [mirror, courtId],
  );
  return useSyncExternalStore(subscribe, read, read);
};

/** A court's freshness, drawn again every second. */
export const useFreshness = (courtId: string): Freshness => {
  const mirror = useBoardMirror();
  useCourtTicking(courtId, () => JSON.stringify(freshnessNow(mirror, courtId)));
  return freshnessNow(mirror, courtId);
};

/** The kind of a court's freshness, drawn again only when the kind changes. */
export const useFreshnessKind = (courtId: string): Freshness["kind"] => {
  const mirror = useBoardMirror();
  return useCourtTicking(courtId, () => freshnessNow(mirror, courtId).kind);
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
