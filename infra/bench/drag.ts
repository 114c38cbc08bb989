import type { Browser } from "@playwright/test";
import { withBenchDay } from "./bench-day.ts";
import type { DragTimes } from "./drag-latencies.ts";
import { CPU_SLOW_DOWN, openDraggedFloor, openDraggedPad } from "./drag-pages.ts";
import { type DraggedPage, dragRun } from "./drag-run.ts";
import { type Judged, judge, LARGEST_SPREAD } from "./judge.ts";
import { openBrowser } from "./open-browser.ts";
import type { Bench, Outcome } from "./outcome.ts";
import { median, quantile } from "./quantile.ts";

const BAR = 1.5;
const REPEATS = 5;
const RUNS = 3;

interface Repeat {
  readonly pad: DragTimes;
  readonly floor: DragTimes;
}

/** Pad and floor in turns, each first in every other one. */
const measure = async (browser: Browser, pad: DraggedPage, floor: DraggedPage): Promise<Repeat[]> => {
  const repeats: Repeat[] = [];
  for (let i = 0; i < REPEATS; i += 1) {
    const first = await dragRun(browser, i % 2 === 0 ? floor : pad);
    const second = await dragRun(browser, i % 2 === 0 ? pad : floor);
    repeats.push(i % 2 === 0 ? { floor: first, pad: second } : { floor: second, pad: first });
  }
  return repeats;
};

const turnsAt = (repeats: readonly Repeat[], q: number) =>
  repeats.map(({ pad, floor }) => ({
    ours: quantile(pad.latenciesMs, q),
    floor: quantile(floor.latenciesMs, q),
  }));

const listed = (values: readonly number[]): string => values.map((ms) => ms.toFixed(1)).join(", ");

const judgeAndSay = (repeats: readonly Repeat[], name: string, q: number): Judged => {
  const turns = turnsAt(repeats, q);
  const judged = judge(turns, BAR);
  console.log(`  ${name}, ms in ${REPEATS} turns: pad ${listed(turns.map(({ ours }) => ours))}`);
  console.log(`    floor ${listed(turns.map(({ floor }) => floor))}, spread ${judged.spread.toFixed(2)}`);
  console.log(`    ratio ${judged.ratio.toFixed(2)} (bar ${BAR}) ${judged.verdict.toUpperCase()}`);
  return judged;
};

const sayFrames = (repeats: readonly Repeat[]): void => {
  const of = (times: (repeat: Repeat) => DragTimes): string =>
    median(repeats.flatMap((repeat) => times(repeat).framesMs)).toFixed(1);
  console.log(
    `  main thread per frame, p50: pad ${of(({ pad }) => pad)} ms, floor ${of(({ floor }) => floor)} ms`,
  );
};

/** Half of the movements and 95 in 100 both have to keep the bar; a noisy run is made again. */
const judgeRuns = async (browser: Browser, pad: DraggedPage, floor: DraggedPage): Promise<Outcome> => {
  for (let run = 1; run <= RUNS; run += 1) {
    const repeats = await measure(browser, pad, floor);
    const verdicts = [judgeAndSay(repeats, "p50", 0.5), judgeAndSay(repeats, "p95", 0.95)].map(
      ({ verdict }) => verdict,
    );
    sayFrames(repeats);
    if (!verdicts.includes("noisy"))
      return { name: "drag", verdict: verdicts.includes("missed") ? "missed" : "kept" };
    console.log(
      `  the floor itself differs by more than ${LARGEST_SPREAD}: run ${run} of ${RUNS} is not judged`,
    );
  }
  return { name: "drag", verdict: "noisy" };
};

/**
 * Drag to paint on the pad's court in the middle of a rally, against a page whose handler only paints a line.
 * Spec BN5.
 */
export const benchDrag: Bench = async () => {
  const browser = await openBrowser();
  try {
    return await withBenchDay(browser, "drag", async (day) => {
      const pad = await openDraggedPad(browser, day);
      const floor = await openDraggedFloor(browser, pad.box);
      console.log(`drag: from movement to presented frame, processor slowed down ${CPU_SLOW_DOWN} times`);
      for (const target of [floor, pad]) await dragRun(browser, target);
      return [await judgeRuns(browser, pad, floor)];
    });
  } finally {
    await browser.close();
  }
};
