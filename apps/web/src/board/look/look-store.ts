import type { BoardMirror } from "@courtloom/sync";
import type { ChoiceStorage } from "../choice/choice-store.ts";
import { isLookedAt, type LastLook, lookAtBoard, readLook } from "./last-look.ts";

/** Whether a page can be seen, and when that changes. */
export interface Visibility {
  readonly isHidden: () => boolean;
  readonly onChange: (changed: () => void) => () => void;
}

export interface LookStoreOptions {
  readonly mirror: Pick<BoardMirror, "get" | "subscribe" | "serverNowMs">;
  readonly storage: ChoiceStorage | undefined;
  readonly key: string;
  readonly visibility: Visibility;
  readonly monotonicMs: () => number;
}

export interface LookStore {
  /** Undefined until the board was read. */
  readonly get: () => LastLook | undefined;
  readonly markRead: () => void;
  readonly subscribe: (changed: () => void) => () => void;
  readonly close: () => void;
}

/**
 * The last look at a board: when it was opened, marked as read, or hidden after ten seconds of looking. Kept
 * by the tab, so that it outlives a reload and nothing else. SPEC rule BD46.
 */
export const createLookStore = (options: LookStoreOptions): LookStore => {
  const { mirror, storage, key, visibility, monotonicMs } = options;
  const listeners = new Set<() => void>();
  let look = readLook(storage?.getItem(key) ?? null);
  let shownAtMs = monotonicMs();

  const markRead = () => {
    const { board } = mirror.get();
    const tiles = [...board.courts.values()].map(({ tile }) => tile);
    look = lookAtBoard(tiles, mirror.serverNowMs());
    try {
      storage?.setItem(key, JSON.stringify(look));
    } catch {
      // Full or refused: after a reload the look begins with that.
    }
    for (const listener of listeners) listener();
  };
  const begin = () => {
    if (look === undefined && mirror.get().board.day !== undefined) markRead();
  };
  const turned = () => {
    if (!visibility.isHidden()) shownAtMs = monotonicMs();
    else if (look !== undefined && isLookedAt(monotonicMs() - shownAtMs)) markRead();
  };
  const stops = [mirror.subscribe(begin), visibility.onChange(turned)];
  begin();

  return {
    get: () => look,
    markRead,
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    close: () => {
      for (const stop of stops) stop();
    },
  };
};

export const pageVisibility: Visibility = {
  isHidden: () => document.visibilityState === "hidden",
  onChange: (changed) => {
    document.addEventListener("visibilitychange", changed);
    return () => document.removeEventListener("visibilitychange", changed);
  },
};
