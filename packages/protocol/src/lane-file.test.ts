import { describe, expect, it } from "vitest";
import { readLaneFile } from "./lane-file.ts";

const MATCH = "0b54a5d8-6a5e-4c40-9b3a-0d8f1d2c3b41";
const entry = (n: number, over: object = {}) => ({
  ...{ v: 1, id: `00000000-0000-4000-8000-00000000000${n}`, n, atMs: 1, wallMs: 2 },
  ...{ body: { kind: "PointReplayed" }, ...over },
});
const lane = (entries: readonly unknown[], over: object = {}) => ({
  ...{ laneId: "lane-1", matchId: MATCH, level: "every", staff: false, entries, ...over },
});
const file = (over: object = {}, ...lanes: readonly unknown[]) => ({
  ...{ format: "courtloom-lanes", v: 1, writtenMs: 5, lanes: lanes.length > 0 ? lanes : [lane([entry(1)])] },
  ...over,
});

describe("a file of lanes", () => {
  it("[SY22] tells something else, a newer file and a damaged one apart", () => {
    for (const other of [
      null,
      7,
      "x",
      [],
      {},
      { format: "else" },
      JSON.parse('{"__proto__":{"format":"courtloom-lanes","v":1}}'),
    ]) {
      expect(readLaneFile(other)).toEqual({ ok: false, error: "not_a_lane_file" });
    }
    expect(readLaneFile(file({ v: 2, more: true }))).toEqual({ ok: false, error: "newer_file" });
    const damaged = [
      file({ more: 1 }),
      file({ writtenMs: -1 }),
      file({ lanes: [] }),
      file({}, lane([])),
      file({}, lane([entry(1)], { names: { A: "Noor V.", B: "Elsbeth K." } })),
      file({}, lane([entry(1)], { matchId: "../etc" })),
      file({}, lane([entry(1)]), lane([entry(1)])),
      file({}, lane(Array.from({ length: 5_001 }, (_, i) => entry(i + 1)))),
    ];
    for (const each of damaged) expect(readLaneFile(each)).toEqual({ ok: false, error: "bad_file" });
  });

  it("[SY22] refuses numbers that do not follow each other, and lanes that tell none", () => {
    const numbers = [
      [entry(1), entry(3)],
      [entry(2), entry(1)],
      [entry(1), entry(1)],
      ["x", 7],
    ];
    for (const entries of numbers) {
      expect(readLaneFile(file({}, lane(entries)))).toEqual({ ok: false, error: "bad_file" });
    }
  });

  it("[SY22] keeps an entry that cannot be read under its number, and goes on after it", () => {
    const odd = entry(5, { body: { kind: "MatchSealed" } });
    const read = readLaneFile(file({}, lane([entry(4), odd, entry(6)])));
    expect(read.ok && read.value.lanes[0]?.items.map((item) => [item.n, "entry" in item])).toEqual([
      [4, true],
      [5, false],
      [6, true],
    ]);
    expect(read.ok && read.value.lanes[0]?.items[1]).toEqual({
      n: 5,
      rejected: { code: "bad_shape", raw: JSON.stringify(odd) },
    });
  });
});
