import type { Tile } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { isLookedAt, LEAST_LOOK_MS, lookAtBoard, readLook } from "./last-look.ts";

const tile = { courtId: "court-1", matchId: "m1", state: "playing", score: null } as unknown as Tile;

describe("the last look at a board", () => {
  it("[BD46] is read again after a reload", () => {
    const look = lookAtBoard([tile], 1_800_000_000_000);
    expect(look.courts["court-1"]).toMatchObject({ matchId: "m1", sets: [], progress: null });
    expect(readLook(JSON.stringify(look))).toEqual(look);
  });

  it.each([null, "", "7", "null", '{"atMs":1}', '{"atMs":1,"courts":{"c":7}}'])(
    "[BD46] is none if what was kept is %j",
    (text) => {
      expect(readLook(text)).toBeUndefined();
    },
  );

  it("[BD46] needs ten seconds of looking", () => {
    expect(isLookedAt(LEAST_LOOK_MS)).toBe(true);
    expect(isLookedAt(LEAST_LOOK_MS - 1)).toBe(false);
  });
});
