import type { Entry } from "@courtloom/match-log";
import { MAX_BATCH_BYTES } from "@courtloom/protocol/names";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { backoffMs } from "./backoff.ts";
import { laneClock } from "./lane-clock.ts";
import { nextBatch } from "./next-batch.ts";

const entry = (n: number, padding: number): Entry => ({
  v: 1,
  id: "é".repeat(padding),
  n,
  atMs: 0,
  wallMs: 0,
  body: { kind: "PointReplayed" },
});

describe("what goes into one message", () => {
  it("[SY2] takes what follows the acknowledged entries, in order, within 50 and 32 KB", () => {
    fc.assert(
      fc.property(fc.array(fc.nat({ max: 9_000 }), { maxLength: 80 }), fc.nat(80), (sizes, acked) => {
        const entries = sizes.map((size, i) => entry(i + 1, size));
        const from = Math.min(acked, entries.length);
        const batch = nextBatch(entries, from, 50);
        expect(batch).toEqual(entries.slice(from, from + batch.length));
        expect(batch.length).toBeLessThanOrEqual(50);
        expect(batch.length > 0).toBe(from < entries.length);
        const bytes = new TextEncoder().encode(JSON.stringify(batch)).length;
        if (batch.length > 1) expect(bytes).toBeLessThanOrEqual(MAX_BATCH_BYTES + 2);
      }),
      { seed: 7, numRuns: 200 },
    );
  });
});

describe("how long a lane waits", () => {
  it("[SY3] stays between 0.375 s and 15 s and is spread", () => {
    expect([0, 0.5, 0.999].map((random) => backoffMs(0, random))).toEqual([375, 500, 625]);
    expect(backoffMs(40, 0.999)).toBe(15_000);
    expect(backoffMs(40, 0)).toBe(11_250);
  });
});

describe("a lane's clock", () => {
  it("[SY14] goes on after a reload and never goes back, whatever the wall clock does", () => {
    let wall = 1_000;
    let mono = 50;
    const clock = { wallMs: () => wall, monotonicMs: () => mono };
    const first = laneClock(clock, undefined);
    mono = 350;
    expect(first()).toBe(300);
    mono = 10;
    expect(first()).toBe(300);
    mono = 350;
    const last = { ...entry(1, 1), atMs: 300, wallMs: 1_000 };
    wall = 61_000;
    expect(laneClock(clock, last)()).toBe(60_300);
    wall = -5_000_000;
    expect(laneClock(clock, last)()).toBe(300);
  });
});
