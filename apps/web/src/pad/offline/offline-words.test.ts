import { describe, expect, it } from "vitest";
import { isCopyGone, parseMarks } from "./charted-mark.ts";
import { createCopyWatch } from "./copy-watch.ts";
import { clockWords, copyGoneWords } from "./offline-words.ts";
import { nearlyFull } from "./phone-storage.ts";
import { phoneWords } from "./phone-words.ts";
import { fileName } from "./save-file.ts";

type Watched = Parameters<ReturnType<typeof createCopyWatch>>[0];

describe("what the pad says about this phone", () => {
  it("[PD46] says how far its clock is off, never as a negative span", () => {
    expect(clockWords(5)).toBe("This phone’s clock is 5 min ahead. Order is kept; times shown may be off.");
    expect(clockWords(-61)).toContain("clock is 61 min behind.");
    expect(clockWords(-24 * 60)).toContain("clock is 24 h behind.");
    expect(clockWords(3 * 24 * 60)).toContain("clock is 3 days ahead.");
  });

  it("[PD44] says whether points are kept, and how full the phone is only when it nearly is", () => {
    expect(phoneWords({ keeping: "kept" }, true)).toEqual([
      "Kept: this browser does not clear the points by itself.",
      "Opens without a network.",
    ]);
    expect(phoneWords({ keeping: "mayGo" }, undefined)).toHaveLength(1);
    expect(phoneWords({ keeping: "unknown" }, false)[0]).toMatch(/^Not known/);
    expect(nearlyFull({ usage: 10, quota: 100 })).toBeUndefined();
    expect(nearlyFull({})).toBeUndefined();
    const full = nearlyFull({ usage: 95 * 2 ** 20, quota: 100 * 2 ** 20 });
    expect(phoneWords({ keeping: "mayGo", ...(full ? { nearlyFull: full } : {}) }, true)[1]).toBe(
      "Nearly full: 95 of 100 MB. Save unsent to a file, then free some space.",
    );
  });

  it("[PD45] names a file after court and date, in plain letters", () => {
    const at = new Date(2026, 4, 30, 9).getTime();
    expect(fileName("Court 3", at)).toBe("courtloom-court-3-2026-05-30.json");
    expect(fileName("Füßchen / Süd", at)).toBe("courtloom-fu-chen-sud-2026-05-30.json");
    expect(fileName("…", at)).toBe("courtloom-court-2026-05-30.json");
  });
});

describe("a phone that has lost its own copy", () => {
  const marks = [{ matchId: "m1", laneId: "l1" }];

  it("[PD43] notices it by the lane that it charted and no longer holds", () => {
    expect(isCopyGone(marks, "m1", [])).toBe(true);
    expect(isCopyGone(marks, "m1", [{ laneId: "l1" }])).toBe(false);
    expect(isCopyGone(marks, "m2", [])).toBe(false);
    expect(parseMarks('[{"matchId":"m1","laneId":"l1"},{"matchId":7},null]')).toEqual(marks);
    for (const odd of ["", "{}", "[", null]) expect(parseMarks(odd)).toEqual([]);
  });

  it("[PD43] notices it by the server's word, counts what came back, and still says so once it goes on", () => {
    const copy = createCopyWatch("m1", []);
    const point = (laneId: string, pos: number) => ({
      ...{ pos, laneId, epoch: 1 },
      entry: { body: { kind: "PointCharted" } },
    });
    const log = [point("old", 2), point("old", 3), point("new", 4)] as never;
    const lane = (leader?: object) =>
      ({ record: () => ({ laneId: "new" }), status: () => ({ leader }) }) as Watched;
    expect(copy(lane(), log)).toEqual({});
    expect(copy(lane({ by: "Ioan P." }), log)).toEqual({});
    expect(copy(lane({ by: "Ioan P.", ownPhone: true }), log)).toEqual({ sentPoints: 2 });
    expect(copy(lane(), log)).toEqual({ sentPoints: 2 });
  });

  it("[PD43] says what is here again, and what is lost", () => {
    expect(copyGoneWords(14)).toBe(
      "This phone’s own copy is gone. What had been sent is here again: 14 points; what was unsent then is lost on this phone.",
    );
    expect(copyGoneWords(1)).toContain("again: 1 point;");
  });
});
