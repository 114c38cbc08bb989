import type { Hint } from "../entry-store.ts";

const EVERY_MS = 50;

export interface Notifier {
  readonly notify: (hint: Hint) => void;
}

/**
 * Draws hints together: at most one call of `send` each 50 ms, with the highest pos of each match.
 * `send` never rejects. Rule ES14.
 */
export function createNotifier(send: (hints: readonly Hint[]) => Promise<void>): Notifier {
  const waiting = new Map<string, number>();
  let armed = false;
  const arm = (): void => {
    if (armed) return;
    armed = true;
    setTimeout(flush, EVERY_MS).unref();
  };
  const flush = async (): Promise<void> => {
    const hints = [...waiting].map(([matchId, pos]) => ({ matchId, pos }));
    waiting.clear();
    await send(hints);
    armed = false;
    if (waiting.size > 0) arm();
  };
  return {
    notify: ({ matchId, pos }) => {
      waiting.set(matchId, Math.max(pos, waiting.get(matchId) ?? 0));
      arm();
    },
  };
}
