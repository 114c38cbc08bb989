import type { MatchView } from "@courtloom/match-log";
import { describe, expect, it } from "vitest";
import { createPauseBook } from "./pause-book.ts";

const viewAt = (points: number, wallMs: number): MatchView =>
  ({
    matchId: "m1",
    points: Array.from({ length: points }, (_, i) => ({ id: `p${i}`, wallMs })),
  }) as unknown as MatchView;

const start = (nowMs: number) => {
  const clock = { nowMs, wallMs: () => clock.nowMs };
  return { clock, book: createPauseBook(clock) };
};

describe("when a pause began", () => {
  it("[LV51] is known where phone and server agree, and stays so while the pause lasts", () => {
    const { clock, book } = start(100_000);
    book.sinceMs("c1", viewAt(1, 99_000));
    clock.nowMs = 120_000;
    expect(book.sinceMs("c1", viewAt(2, 119_200))).toBe(119_200);
    clock.nowMs = 180_000;
    expect(book.sinceMs("c1", viewAt(2, 119_200))).toBe(119_200);
  });

  it("[LV51] is not known of a wrong clock, of late points, and of what was there at first", () => {
    const { clock, book } = start(100_000);
    expect(book.sinceMs("c1", viewAt(1, 99_900))).toBeUndefined();
    clock.nowMs = 120_000;
    expect(book.sinceMs("c1", viewAt(2, 180_000))).toBeUndefined();
    expect(book.sinceMs("c1", viewAt(9, 60_000))).toBeUndefined();
    expect(book.sinceMs("c2", undefined)).toBeUndefined();
  });
});
