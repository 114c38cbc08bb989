import { describe, expect, it } from "vitest";
import { ABSOLUTE_MS, IDLE_MS, isOver, nextExpiry, TOUCH_MS } from "./session-life.ts";

const life = (createdMs: number, expiresMs: number) => ({
  createdAt: new Date(createdMs),
  expiresAt: new Date(expiresMs),
});

describe("a session's life", () => {
  it("[AU7] is 12 hours without use and 14 days in all", () => {
    expect([IDLE_MS, ABSOLUTE_MS]).toEqual([43_200_000, 1_209_600_000]);
    expect(isOver(life(0, 100), 99)).toBe(false);
    expect(isOver(life(0, 100), 100)).toBe(true);
    expect(isOver(life(0, ABSOLUTE_MS * 2), ABSOLUTE_MS)).toBe(true);
  });

  it("[AU7] is noted anew no oftener than it has to be, and never beyond its end", () => {
    expect(nextExpiry(life(0, IDLE_MS), TOUCH_MS - 1)).toBeUndefined();
    expect(nextExpiry(life(0, IDLE_MS), TOUCH_MS)).toEqual(new Date(IDLE_MS + TOUCH_MS));
    expect(nextExpiry(life(0, ABSOLUTE_MS - IDLE_MS), ABSOLUTE_MS - 1)).toEqual(new Date(ABSOLUTE_MS));
    expect(nextExpiry(life(0, ABSOLUTE_MS), ABSOLUTE_MS - 1)).toBeUndefined();
  });
});
