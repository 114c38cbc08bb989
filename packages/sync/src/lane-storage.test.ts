import { err } from "@courtloom/core";
import type { Entry } from "@courtloom/match-log";
import { describe, expect, it } from "vitest";
import type { LaneEvent } from "./lane-state.ts";
import { createLaneStorage } from "./lane-storage.ts";
import { createMemoryOutbox } from "./memory-outbox.ts";
import type { Timers } from "./mirror-timers.ts";

const entry = (n: number): Entry => ({
  v: 1,
  id: `e${n}`,
  n,
  atMs: n,
  wallMs: n,
  body: { kind: "PointReplayed" },
});

/** A phone whose storage is full until it is said otherwise, and timers that run when they are told. */
const bench = () => {
  const inner = createMemoryOutbox();
  let isFull = true;
  let due: (() => void) | undefined;
  const events: LaneEvent[] = [];
  const timers: Timers = {
    after: (_, run) => {
      due = run;
      return () => {
        due = undefined;
      };
    },
  };
  const outbox = {
    ...inner,
    add: (laneId: string, each: Entry) =>
      isFull ? Promise.resolve(err("unavailable" as const)) : inner.add(laneId, each),
  };
  const storage = createLaneStorage(outbox, timers, (event) => events.push(event));
  const numbers = async () => (await inner.entries("lane")).map(({ n }) => n);
  const told = (count: number) => expect.poll(() => events.length).toBe(count);
  return {
    storage,
    events,
    numbers,
    told,
    free: () => {
      isFull = false;
    },
    tryAgain: () => due?.(),
    waits: () => due !== undefined,
  };
};

describe("what the phone could not store", () => {
  it("[SY40] is stored before anything later, so that a lane on the phone has no hole", async () => {
    const { storage, events, numbers, told, free } = bench();
    storage.store("lane", entry(1));
    storage.store("lane", entry(2));
    await told(2);
    free();
    storage.store("lane", entry(3));
    await told(4);
    expect(await numbers()).toEqual([1, 2, 3]);
    expect(events.map((event) => (event.type === "stored" ? [event.n, event.safe] : event.type))).toEqual([
      [1, false],
      [2, false],
      [3, true],
      "caughtUp",
    ]);
  });

  it("[SY40] is tried again by itself, until the page is closed", async () => {
    const { storage, events, numbers, told, free, tryAgain, waits } = bench();
    storage.store("lane", entry(1));
    await told(1);
    await expect.poll(waits).toBe(true);
    tryAgain();
    await expect.poll(waits).toBe(true);
    expect(await numbers()).toEqual([]);
    free();
    tryAgain();
    await told(2);
    expect([await numbers(), events.at(-1)?.type, waits()]).toEqual([[1], "caughtUp", false]);
  });
});
