import { afterEach, beforeEach, expect, it, vi } from "vitest";
import type { Hint } from "../entry-store.ts";
import { createNotifier } from "./notifier.ts";

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

it("[ES14] sends at most 20 times a second, with the highest pos of each match", async () => {
  const sent: (readonly Hint[])[] = [];
  const notifier = createNotifier(async (hints) => {
    sent.push(hints);
  });
  for (let ms = 0; ms < 1000; ms += 1) {
    notifier.notify({ matchId: ms % 2 === 0 ? "one" : "two", pos: ms });
    await vi.advanceTimersByTimeAsync(1);
  }
  await vi.advanceTimersByTimeAsync(100);
  expect(sent.length).toBeGreaterThan(15);
  expect(sent.length).toBeLessThanOrEqual(21);
  expect(sent.at(-1)).toContainEqual({ matchId: "two", pos: 999 });
  for (const hints of sent) expect(new Set(hints.map(({ matchId }) => matchId)).size).toBe(hints.length);
});

it("[ES14] waits for a slow send before the next one, and sends nothing when nothing waits", async () => {
  let finish = (): void => undefined;
  let calls = 0;
  const notifier = createNotifier(() => {
    calls += 1;
    return new Promise((resolve) => {
      finish = resolve;
    });
  });
  notifier.notify({ matchId: "one", pos: 1 });
  await vi.advanceTimersByTimeAsync(60);
  notifier.notify({ matchId: "one", pos: 2 });
  await vi.advanceTimersByTimeAsync(500);
  expect(calls).toBe(1);
  finish();
  await vi.advanceTimersByTimeAsync(60);
  expect(calls).toBe(2);
  finish();
  await vi.advanceTimersByTimeAsync(500);
  expect(calls).toBe(2);
});
