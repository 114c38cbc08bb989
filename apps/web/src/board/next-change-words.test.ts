import type { TileEnds } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { nextChangeShort, nextChangeWords } from "./next-change-words.ts";

const SINCE = 1_800_000_000_000;
const after = (seconds: number, ends: TileEnds | undefined) => nextChangeWords(ends, SINCE + seconds * 1000);

describe("how close a court is to a change of ends", () => {
  it.each([
    [{ kind: "game" }, "Change after this game"],
    [{ kind: "gameAndOne" }, "Change after this game and one more"],
    [{ kind: "later" }, "No change after this game"],
    [{ kind: "tieBreak" }, "Change after this tie-break"],
    [{ kind: "set" }, "Change after this set"],
    [{ kind: "points", points: 3 }, "Change in 3 points"],
    [{ kind: "points", points: 1 }, "Change after this point"],
  ] as const)("[BD40] says of %j: %s", (next, words) => {
    expect(after(0, { next })).toBe(words);
  });

  it("[BD40] says a pause with the time that is left, where it is known", () => {
    const rest = { kind: "rest", change: true, allowedSeconds: 90, sinceMs: SINCE } as const;
    expect(after(26, { pause: rest })).toBe("Change of ends, 64 s left");
    expect(after(-1, { pause: rest })).toBe("Change of ends, 90 s left");
    expect(after(90, { pause: rest })).toBe("Change of ends, time is up");
    expect(after(150, { pause: rest })).toBe("Change of ends");
    const { sinceMs: _, ...unknown } = rest;
    expect(after(26, { pause: unknown, next: { kind: "gameAndOne" } })).toBe("Change of ends");
  });

  it("[BD40] says it shorter where there is little room", () => {
    const short = (ends: TileEnds) => nextChangeShort(ends, SINCE + 26_000);
    expect(short({ next: { kind: "gameAndOne" } })).toBe("2 games");
    expect(short({ next: { kind: "points", points: 3 } })).toBe("3 points");
    expect(short({ next: { kind: "points", points: 1 } })).toBe("this point");
    const pause = { kind: "set", allowedSeconds: 120, sinceMs: SINCE } as const;
    expect(short({ pause: { ...pause, change: true } })).toBe("now, 94 s left");
    expect(short({ pause: { ...pause, change: false } })).toBe("set break, 94 s left");
    expect(short({})).toBeNull();
  });

  it("[BD40] says whether there is a rest, and whether ends change between sets", () => {
    const pause = { allowedSeconds: 25, change: true } as const;
    expect(after(0, { pause: { ...pause, kind: "noRest" } })).toBe("Change of ends, no rest");
    expect(after(0, { pause: { ...pause, kind: "set" } })).toBe("Between sets, ends change");
    expect(after(0, { pause: { ...pause, kind: "set", change: false } })).toBe("Between sets, same ends");
    expect(after(0, {})).toBeNull();
    expect(after(0, undefined)).toBeNull();
  });
});
