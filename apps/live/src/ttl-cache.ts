import type { Clock } from "@courtloom/core";

export interface TtlCache<T> {
  /** The kept answer, or a new one from `look`. A look-up that fails is not kept. */
  readonly get: (key: string, look: () => Promise<T>) => Promise<T>;
  readonly forget: (key: string) => void;
}

interface Held<T> {
  readonly answer: Promise<T>;
  readonly untilMs: number;
}

/** Keeps answers for `ttlMs`, at most `limit` of them; questions asked at once share one look-up. */
export const createTtlCache = <T>(clock: Clock, ttlMs: number, limit = 10_000): TtlCache<T> => {
  const held = new Map<string, Held<T>>();
  const drop = (key: string, answer: Promise<T>): void => {
    if (held.get(key)?.answer === answer) held.delete(key);
  };
  const makeRoom = (nowMs: number): void => {
    if (held.size < limit) return;
    for (const [key, { untilMs }] of held) if (untilMs <= nowMs) held.delete(key);
    for (const key of held.keys()) {
      if (held.size < limit) return;
      held.delete(key);
    }
  };
  return {
    get: (key, look) => {
      const nowMs = clock.monotonicMs();
      const kept = held.get(key);
      if (kept && kept.untilMs > nowMs) return kept.answer;
      makeRoom(nowMs);
      const answer = look();
      held.delete(key);
      held.set(key, { answer, untilMs: nowMs + ttlMs });
      answer.catch(() => drop(key, answer));
      return answer;
    },
    forget: (key) => held.delete(key),
  };
};
