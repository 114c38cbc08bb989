import type { Entry } from "@courtloom/match-log";
import { describe, expect, it } from "vitest";
import { KEEP_AFTER_SEAL_MS } from "./is-swept.ts";
import type { LaneRecord } from "./lane-record.ts";
import { createMemoryOutbox } from "./memory-outbox.ts";
import { type LaneWanted, resumeLane } from "./resume-lane.ts";
import { unsentLanes } from "./unsent-lanes.ts";

const wanted: LaneWanted = {
  matchId: "match-1",
  courtName: "Court 1",
  chartist: "Ioan P.",
  names: { A: "Noor V.", B: "Elsbeth K." },
  level: "score",
};
const entry = (n: number, id = `e${n}`): Entry => ({
  v: 1,
  id,
  n,
  atMs: 0,
  wallMs: 0,
  body: { kind: "PointReplayed" },
});
const seal = (record: LaneRecord, acked: number): LaneRecord => ({ ...record, acked, sealedWallMs: 1_000 });

describe("the outbox", () => {
  it("[SY1] never overwrites an entry", async () => {
    const outbox = createMemoryOutbox();
    expect(await outbox.add("lane", entry(1, "mine"))).toMatchObject({ ok: true });
    expect(await outbox.add("lane", entry(1, "other"))).toEqual({ ok: false, error: "taken" });
    expect((await outbox.entries("lane")).map(({ id }) => id)).toEqual(["mine"]);
  });

  it("[SY12] keeps acknowledged entries until 14 days after the match was sealed", async () => {
    const outbox = createMemoryOutbox();
    const { record } = await resumeLane(outbox, wanted, 0);
    await outbox.add(record.laneId, entry(1));
    await outbox.saveLane({ ...record, acked: 1 });
    expect(await outbox.sweep(10 * KEEP_AFTER_SEAL_MS)).toBe(0);
    await outbox.saveLane(seal(record, 1));
    expect(await outbox.sweep(999 + KEEP_AFTER_SEAL_MS)).toBe(0);
    expect(await outbox.sweep(1_000 + KEEP_AFTER_SEAL_MS)).toBe(1);
    expect(await outbox.entries(record.laneId)).toEqual([]);
  });

  it("[SY12] never deletes a lane with anything unsent", async () => {
    const outbox = createMemoryOutbox();
    const { record } = await resumeLane(outbox, wanted, 0);
    await outbox.add(record.laneId, entry(1));
    await outbox.saveLane(seal(record, 0));
    expect(await outbox.sweep(100 * KEEP_AFTER_SEAL_MS)).toBe(0);
    expect(await outbox.entries(record.laneId)).toHaveLength(1);
  });
});

describe("coming back to a match", () => {
  it("[SY11] continues the same person's lane and never another person's", async () => {
    const outbox = createMemoryOutbox();
    const first = await resumeLane(outbox, wanted, 0);
    await outbox.add(first.record.laneId, entry(1));
    const again = await resumeLane(outbox, wanted, 5);
    expect([again.record.laneId, again.entries.length]).toEqual([first.record.laneId, 1]);
    const other = await resumeLane(outbox, { ...wanted, chartist: "Maren H." }, 6);
    expect(other.record.laneId).not.toBe(first.record.laneId);
    expect(other.entries).toEqual([]);
  });

  it("[SY11] finds lanes of earlier matches and people that are not sent yet", async () => {
    const outbox = createMemoryOutbox();
    const { record } = await resumeLane(outbox, wanted, 0);
    await outbox.add(record.laneId, entry(1));
    expect((await unsentLanes(outbox)).map((lane) => lane.record.laneId)).toEqual([record.laneId]);
    await outbox.saveLane({ ...record, acked: 1 });
    expect(await unsentLanes(outbox)).toEqual([]);
  });
});
