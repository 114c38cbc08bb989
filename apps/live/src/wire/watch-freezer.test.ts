import type { WatchDesign } from "@courtloom/decisions";
import { freezeWatch } from "@courtloom/decisions";
import { RATES } from "@courtloom/match-log";
import { expect, it, onTestFinished } from "vitest";
import type { Timers } from "../runtime.ts";
import { processTimers } from "./process-runtime.ts";
import { createWatchFreezer, type WatchFreezerOptions } from "./watch-freezer.ts";

const design = (over: Partial<WatchDesign> = {}): WatchDesign => ({
  side: "A",
  rate: "lineMissed",
  usual: { mean: 0.25, low: 0.1, high: 0.4, a: 20, b: 60, source: "own" },
  pastAttempts: [8, 12, 31, 18, 22],
  alpha: 0.05,
  quiet: false,
  ...over,
});

/** A thread's program of a few words, to see what becomes of it. */
const program = (text: string): URL => new URL(`data:text/javascript,${encodeURIComponent(text)}`);
const ECHO = `import { parentPort } from "node:worker_threads";
parentPort.on("message", (designs) => parentPort.postMessage(designs));`;

const open = (options: Partial<WatchFreezerOptions> = {}) => {
  const freezer = createWatchFreezer({ timers: processTimers, threads: 1, waitMs: 60_000, ...options });
  onTestFinished(() => freezer.close());
  return freezer;
};

/** Timers that fire when the test says so. */
const handTimers = () => {
  const waiting = new Set<() => void>();
  const timers: Timers = {
    after: (_, run) => {
      waiting.add(run);
      return () => waiting.delete(run);
    },
  };
  return { timers, waiting, fireFirst: () => [...waiting][0]?.() };
};

it("[WA13] answers in a thread what the pure function answers, in order, while this one goes on", async () => {
  const designs = RATES.flatMap((rate) => [
    design({ rate }),
    design({ rate, side: "B", quiet: true, alpha: 0.0127 }),
  ]);
  const state = { done: false };
  const frozen = open()
    .freeze(designs)
    .finally(() => {
      state.done = true;
    });
  // Each turn of the event loop is one in which a court's messages would have been served.
  let turns = 0;
  while (!state.done) {
    await new Promise((resolve) => setImmediate(resolve));
    turns += 1;
  }
  expect(turns).toBeGreaterThan(10);
  expect(await frozen).toEqual({ ok: true, value: designs.map(freezeWatch) });
});

it("[WA13] answers many at once, each its own, with as many threads as were given", async () => {
  const freezer = open({ threads: 2, program: program(ECHO) });
  const asked = Array.from({ length: 12 }, (_, i) => [design({ alpha: 0.001 * (i + 1) })]);
  const answers = await Promise.all(asked.map((designs) => freezer.freeze(designs)));
  expect(answers).toEqual(asked.map((value) => ({ ok: true, value })));
});

it("[WA13] asks no thread for nothing", async () => {
  const freezer = open({ program: program("throw new Error('x')") });
  expect(await freezer.freeze([])).toEqual({ ok: true, value: [] });
});

it.each([
  [
    "throws",
    "import { parentPort } from 'node:worker_threads'; parentPort.on('message', () => { throw new Error('x'); });",
  ],
  [
    "ends",
    "import { parentPort } from 'node:worker_threads'; parentPort.on('message', () => process.exit(0));",
  ],
  ["cannot be loaded", "import 'node:nothing-of-the-kind';"],
])("[WA14] says that it failed when the thread %s, and tries anew the next time", async (_, text) => {
  const freezer = open({ program: program(text) });
  expect(await freezer.freeze([design()])).toEqual({ ok: false, error: "failed" });
  const both = await Promise.all([freezer.freeze([design()]), freezer.freeze([design()])]);
  expect(both).toEqual([1, 2].map(() => ({ ok: false, error: "failed" })));
});

it("[WA14] waits no longer than it was told, for one that hangs and for those behind it", async () => {
  const { timers, waiting, fireFirst } = handTimers();
  // Answers only what is about the share of line balls.
  const picky = `import { parentPort } from "node:worker_threads";
parentPort.on("message", (designs) => {
  if (designs[0].rate === "lineShare") parentPort.postMessage(designs);
});`;
  const freezer = open({ timers, program: program(picky) });
  const hangs = freezer.freeze([design()]);
  const behind = freezer.freeze([design({ rate: "lineShare" })]);
  const last = freezer.freeze([design({ rate: "keptMissed" })]);
  expect(waiting.size).toBe(3);
  [...waiting][2]?.();
  expect(await last).toEqual({ ok: false, error: "late" });
  fireFirst();
  expect(await hangs).toEqual({ ok: false, error: "late" });
  expect(await behind).toEqual({ ok: true, value: [design({ rate: "lineShare" })] });
});

it("[WA15] ends its threads when it is closed, and answers whoever waits", async () => {
  const freezer = open({
    program: program(
      "import { parentPort } from 'node:worker_threads'; parentPort.on('message', () => undefined);",
    ),
  });
  const waiting = [freezer.freeze([design()]), freezer.freeze([design()])];
  await freezer.close();
  const closed = { ok: false, error: "closed" };
  expect(await Promise.all(waiting)).toEqual([closed, closed]);
  expect(await freezer.freeze([design()])).toEqual(closed);
});
