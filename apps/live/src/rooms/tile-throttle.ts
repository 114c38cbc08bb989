import type { Runtime } from "../runtime.ts";

/** At most four updates a second of one court. */
export const TILE_EVERY_MS = 250;

export interface Throttle {
  /** Something of `key` changed: `send` is called for it, now or when its time has come, once. */
  readonly touch: (key: string) => void;
  readonly stop: () => void;
}

/** Calls `send` for a key at most every `TILE_EVERY_MS`; it is for `send` to look at what is true then. SPEC LV8. */
export const createThrottle = ({ clock, timers }: Runtime, send: (key: string) => void): Throttle => {
  const sentMs = new Map<string, number>();
  const due = new Map<string, () => void>();
  const fire = (key: string): void => {
    due.delete(key);
    sentMs.set(key, clock.monotonicMs());
    send(key);
  };
  return {
    touch: (key) => {
      if (due.has(key)) return;
      const waitMs = (sentMs.get(key) ?? Number.NEGATIVE_INFINITY) + TILE_EVERY_MS - clock.monotonicMs();
      if (waitMs <= 0) fire(key);
      else
        due.set(
          key,
          timers.after(waitMs, () => fire(key)),
        );
    },
    stop: () => {
      for (const cancel of due.values()) cancel();
      due.clear();
    },
  };
};
