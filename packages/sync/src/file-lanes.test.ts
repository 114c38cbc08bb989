import type { Entry } from "@courtloom/match-log";
import { readLaneFile } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { fileLanes } from "./file-lanes.ts";
import type { LaneRecord } from "./lane-record.ts";
import { createMemoryOutbox } from "./memory-outbox.ts";

const MATCH = "0b54a5d8-6a5e-4c40-9b3a-0d8f1d2c3b41";
const EARLIER = "1c54a5d8-6a5e-4c40-9b3a-0d8f1d2c3b42";
const idOf = (i: number) => `00000000-0000-4000-8000-${String(i).padStart(12, "0")}`;
const entry = (n: number, id = n): Entry => ({
  ...{ v: 1, id: idOf(id), n, atMs: n * 1_000, wallMs: 1_700_000_000_000 + n },
  body: { kind: "PointReplayed" },
});
const lane = (laneId: string, over: Partial<LaneRecord> = {}): LaneRecord => ({
  ...{ laneId, matchId: MATCH, courtName: "Court 3", chartist: "Ioan P.", level: "every" },
  ...{ names: { A: "Noor V.", B: "Elsbeth K." }, acked: 0, epoch: 1, incarnation: "inc-1" },
  ...{ rejected: [], startedWallMs: 1, ...over },
});
const phoneWith = async (...lanes: readonly (readonly [LaneRecord, readonly Entry[]])[]) => {
  const outbox = createMemoryOutbox();
  for (const [record, entries] of lanes) {
    await outbox.saveLane(record);
    for (const each of entries) await outbox.add(record.laneId, each);
  }
  return outbox;
};

describe("lanes in a file", () => {
  it("[SY21] are what the server is not known to hold, of every match, without a name", async () => {
    const outbox = await phoneWith(
      [lane("old", { matchId: EARLIER, startedWallMs: 0, staff: true }), [entry(1, 11)]],
      [lane("now", { acked: 2 }), [entry(1), entry(2), entry(3), entry(4)]],
    );
    const file = await fileLanes(outbox, "unsent", 77);
    expect(
      file?.lanes.map(({ laneId, staff, entries }) => [laneId, staff, entries.map(({ n }) => n)]),
    ).toEqual([
      ["old", true, [1]],
      ["now", false, [3, 4]],
    ]);
    expect(file).toMatchObject({ format: "courtloom-lanes", v: 1, writtenMs: 77 });
    expect(JSON.stringify(file)).not.toMatch(/Noor|Elsbeth|Ioan/);
  });

  it("[SY21] are a match's lanes whole, also when all is sent; nothing gives no file", async () => {
    const outbox = await phoneWith(
      [lane("old", { matchId: EARLIER, acked: 1 }), [entry(1, 11)]],
      [lane("now", { acked: 2 }), [entry(1), entry(2)]],
    );
    const file = await fileLanes(outbox, { matchId: MATCH }, 77);
    expect(file?.lanes.map(({ laneId, entries }) => [laneId, entries.length])).toEqual([["now", 2]]);
    expect(await fileLanes(outbox, "unsent", 77)).toBeUndefined();
  });

  it("[SY21] have each entry once where a lane was continued by another", async () => {
    const outbox = await phoneWith(
      [lane("first", { acked: 2, continuedBy: "next" }), [entry(1), entry(2), entry(3)]],
      [lane("next", { startedWallMs: 2 }), [entry(1, 3), entry(2, 4)]],
    );
    const whole = await fileLanes(outbox, { matchId: MATCH }, 77);
    expect(whole?.lanes.map(({ laneId, entries }) => [laneId, entries.map(({ id }) => id)])).toEqual([
      ["first", [idOf(1), idOf(2)]],
      ["next", [idOf(3), idOf(4)]],
    ]);
    const unsent = await fileLanes(outbox, "unsent", 77);
    expect(unsent?.lanes.map(({ laneId }) => laneId)).toEqual(["next"]);
  });

  it("[SY22] read back as they were saved, numbers and all", async () => {
    const outbox = await phoneWith([lane("now", { acked: 1 }), [entry(1), entry(2), entry(3)]]);
    const file = await fileLanes(outbox, "unsent", 77);
    const read = readLaneFile(JSON.parse(JSON.stringify(file)));
    expect(read).toEqual({
      ok: true,
      value: {
        writtenMs: 77,
        lanes: [
          {
            ...{ laneId: "now", matchId: MATCH, level: "every", staff: false, incarnation: "inc-1" },
            items: [
              { n: 2, entry: entry(2) },
              { n: 3, entry: entry(3) },
            ],
          },
        ],
      },
    });
  });
});
