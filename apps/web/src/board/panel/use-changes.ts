import { useCallback, useSyncExternalStore } from "react";
import type { LookStore } from "../look/look-store.ts";
import { whatChanged } from "../look/what-changed.ts";
import { secondTicker } from "../second-ticker.ts";
import { useBoardMirror } from "../use-board.ts";

export interface CourtChanges {
  readonly courtNo: number;
  readonly matchId: string | null;
  readonly words: readonly string[];
}

const NONE = "[]";

/** Courts on which something changed since the last look, by number; looked at once a second, not with every point. */
export const useChanges = (look: LookStore): readonly CourtChanges[] => {
  const mirror = useBoardMirror();
  const subscribe = useCallback(
    (changed: () => void) => {
      const stops = [look.subscribe(changed), secondTicker.subscribe(changed)];
      return () => {
        for (const stop of stops) stop();
      };
    },
    [look],
  );
  const read = (): string => {
    const last = look.get();
    if (!last) return NONE;
    const { order, courts } = mirror.get().board;
    const changes = order.flatMap((id): CourtChanges[] => {
      const tile = courts.get(id)?.tile;
      if (!tile) return [];
      const words = whatChanged(last.courts[id], tile);
      return words.length === 0 ? [] : [{ courtNo: tile.courtNo, matchId: tile.matchId, words }];
    });
    return JSON.stringify(changes);
  };
  const text = useSyncExternalStore(subscribe, read, read);
  return JSON.parse(text) as readonly CourtChanges[];
};
