import type { Hint } from "../entry-store.ts";

const EVERY_MS = 50;

export interface Notifier {
  readonly notify: (hint: Hint) => void;
}

/** Draws hints together: at most one call of `send` each 50 ms, with the highest pos of each match. Rule ES14. */
export function createNotifier(send: (hints: readonly Hint[]) => Promise<void>): Notifier {
  const waiting = new Map<string, number>();
  let timer: NodeJS.Timeout | undefined;
  const flush = async (): Promise<void> => {
    const hints = [...waiting].map(([matchId, pos]) => ({ matchId, pos }));
    waiting.clear();
    await send(hints);
    timer = undefined;
    if (waiting.size > 0) arm();
  };
  const arm = (): void => {
    timer ??= setTimeout(flush, EVERY_MS).unref();
  };
  return {
    notify: ({ matchId, pos }) => {
      waiting.set(matchId, Math.max(pos, waiting.get(matchId) ?? 0));
      arm();
    },
  };
}
