const HOUR_MS = 3_600_000;

/** An account session ends when it was not used for so long … */
export const IDLE_MS = 12 * HOUR_MS;
/** … or so long after it began, used or not. */
export const ABSOLUTE_MS = 14 * 24 * HOUR_MS;
/** How exactly use is noted: at most one write in this time. */
export const TOUCH_MS = 5 * 60_000;

interface Life {
  readonly createdAt: Date;
  readonly expiresAt: Date;
}

export const isOver = (life: Life, nowMs: number): boolean =>
  life.expiresAt.getTime() <= nowMs || life.createdAt.getTime() + ABSOLUTE_MS <= nowMs;

/** When the session ends if it is not used again; undefined when that is noted well enough already. */
export const nextExpiry = (life: Life, nowMs: number): Date | undefined => {
  const nextMs = Math.min(nowMs + IDLE_MS, life.createdAt.getTime() + ABSOLUTE_MS);
  return nextMs - life.expiresAt.getTime() >= TOUCH_MS ? new Date(nextMs) : undefined;
};
