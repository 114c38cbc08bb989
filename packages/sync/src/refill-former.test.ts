import { type LaneAppend, type LaneOpen, UP } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import type { Channel } from "./channel.ts";
import { createLane } from "./create-lane.ts";
import type { LaneRecord } from "./lane-record.ts";
import { createMemoryOutbox } from "./memory-outbox.ts";
import { refillFormer } from "./refill-former.ts";

const clock = { wallMs: () => 5_000, monotonicMs: () => 5_000 };
const recordOf = (laneId: string, changes: Partial<LaneRecord> = {}): LaneRecord => ({
  laneId,
  matchId: "match-1",
  courtName: "Court 1",
  chartist: "Ioan P.",
  names: { A: "Noor V.", B: "Elsbeth K." },
  level: "every",
  acked: 0,
  epoch: 1,
  rejected: [],
  startedWallMs: 1_000,
  ...changes,
});
const entryOf = (n: number) =>
  ({ v: 1, id: `e${n}`, n, atMs: n, wallMs: n, body: { kind: "PointReplayed" } }) as const;

/** A server that holds `held` entries of each lane, under an incarnation that can be changed. */
const serverOf = () => {
  let incarnation = "log-1";
  const held = new Map<string, number>();
  const got: (readonly [string, number])[] = [];
  const answer = (event: string, message: unknown) => {
    if (event === UP.laneOpen) {
      const { laneId } = message as LaneOpen;
      const cursor = held.get(laneId) ?? 0;
      return {
        ok: true,
        incarnation,
        epoch: 1,
        cursor,
        head: 9,
        opening: undefined,
        chartist: "",
        leads: true,
      };
    }
    if (event !== UP.laneAppend) return { ok: true, leads: true };
    const { laneId, entries } = message as LaneAppend;
    for (const { n } of entries) {
      held.set(laneId, n);
      got.push([laneId, n]);
    }
    return { ok: true, kind: "appended", upTo: held.get(laneId), head: 9, rejected: [] };
  };
  const channel: Channel = {
    request: async (event, message) => answer(event, message) as never,
    on: () => () => undefined,
    state: () => "open",
    onState: () => () => undefined,
    close: () => undefined,
  };
  const restore = () => {
    incarnation = "log-2";
    held.clear();
  };
  return { channel, got, restore };
};

describe("earlier lanes of a match", () => {
  it("[SY42] come back to a log that was restored, but not what another lane went on with", async () => {
    const outbox = createMemoryOutbox();
    const { channel, got, restore } = serverOf();
    restore();
    const whole = recordOf("lane-1", {
      acked: 2,
      incarnation: "log-1",
      continuedBy: "lane-2",
      continuedFrom: 3,
    });
    const cut = recordOf("lane-2", {
      acked: 2,
      incarnation: "log-1",
      continuedBy: "lane-3",
      continuedFrom: 2,
    });
    await outbox.saveLane(whole);
    await outbox.saveLane(cut);
    for (const n of [1, 2]) await outbox.add("lane-1", entryOf(n));
    for (const n of [1, 2]) await outbox.add("lane-2", entryOf(n));
    const options = { outbox, channel, clock };
    const current = createLane({ ...options, record: recordOf("lane-3"), entries: [] });
    const refill = refillFormer({ ...options, current });
    await expect
      .poll(() => [...got].sort())
      .toEqual([
        ["lane-1", 1],
        ["lane-1", 2],
        ["lane-2", 1],
      ]);
    await expect.poll(() => refill.lanes().length).toBe(0);
    refill.close();
    current.close();
  });

  it("[SY42] are left alone while the log is the one that they know", async () => {
    const outbox = createMemoryOutbox();
    const { channel, got } = serverOf();
    await outbox.saveLane(recordOf("lane-1", { acked: 1, incarnation: "log-1" }));
    await outbox.add("lane-1", entryOf(1));
    const options = { outbox, channel, clock };
    const current = createLane({ ...options, record: recordOf("lane-3"), entries: [] });
    const refill = refillFormer({ ...options, current });
    await expect.poll(() => current.record().incarnation).toBe("log-1");
    expect([got, refill.lanes()]).toEqual([[], []]);
    refill.close();
    current.close();
  });
});
