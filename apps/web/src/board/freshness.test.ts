import { describe, expect, it } from "vitest";
import { BLIND_FROM_MS, freshnessOf, NOT_HEARD_FROM_MS, silenceWords } from "./freshness.ts";

const NOW = 1_750_000_000_000;
const heard = (agoMs: number) => ({ matchId: "m", heardMs: NOW - agoMs, unsent: 0 });

describe("freshness of a court", () => {
  it("[BD2] counts whole seconds since the phone was heard, and says so from ten", () => {
    expect(freshnessOf("playing", heard(2_999), NOW)).toEqual({ kind: "heard", seconds: 2 });
    expect(freshnessOf("playing", heard(NOT_HEARD_FROM_MS - 1), NOW)).toEqual({ kind: "heard", seconds: 9 });
    expect(freshnessOf("playing", heard(NOT_HEARD_FROM_MS), NOW)).toEqual({ kind: "notHeard", seconds: 10 });
  });

  it("[BD3] is blind from ninety seconds of silence in play", () => {
    expect(freshnessOf("playing", heard(BLIND_FROM_MS - 1), NOW)).toEqual({ kind: "notHeard", seconds: 89 });
    expect(freshnessOf("playing", heard(BLIND_FROM_MS), NOW)).toEqual({ kind: "blind", seconds: 90 });
  });

  it("[BD3] is blind in play when no phone was ever heard", () => {
    const never = { kind: "blind", seconds: null };
    expect(freshnessOf("playing", null, NOW)).toEqual(never);
    expect(freshnessOf("playing", { matchId: "m", heardMs: null, unsent: null }, NOW)).toEqual(never);
  });

  it("[BD3] does not mind silence where nothing is played", () => {
    for (const state of ["empty", "waiting", "suspended", "over"] as const) {
      expect(freshnessOf(state, heard(1_000_000), NOW)).toEqual({ kind: "none" });
    }
  });

  it("[BD2] takes a word from the future as heard just now", () => {
    expect(freshnessOf("playing", heard(-400), NOW)).toEqual({ kind: "heard", seconds: 0 });
  });

  it("[BD3] says long silences in minutes and hours", () => {
    expect([94, 119, 120, 7_199, 7_200].map(silenceWords)).toEqual([
      "94 s",
      "119 s",
      "2 min",
      "119 min",
      "2 h",
    ]);
  });
});
