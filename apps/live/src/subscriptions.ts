import type { Subscriptions } from "./messages/message-context.ts";

/** Courts and days that one socket may follow at once; a board with a page per court needs a few dozen. */
const MOST = 100;

export interface OwnSubscriptions extends Subscriptions {
  readonly count: () => number;
  /** Ends all; nothing can be added afterwards. */
  readonly close: () => void;
  /** Ends all. */
  readonly clear: () => void;
}

export const createSubscriptions = (): OwnSubscriptions => {
  const ends = new Map<string, () => void>();
  let closed = false;
  const clear = (): void => {
    const all = [...ends.values()];
    ends.clear();
    for (const end of all) end();
  };
  return {
    add: (key, end) => {
      if (closed || (ends.size >= MOST && !ends.has(key))) return false;
      ends.set(key, end);
      return true;
    },
    has: (key) => ends.has(key),
    end: (key) => {
      const end = ends.get(key);
      ends.delete(key);
      end?.();
    },
    count: () => ends.size,
    clear,
    close: () => {
      closed = true;
      clear();
    },
  };
};
