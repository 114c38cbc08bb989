import { setTimeout as wait } from "node:timers/promises";
import type { Browser, CDPSession, Page } from "@playwright/test";
import { type DragTimes, dragTimes, type Move } from "./drag-latencies.ts";
import { recordTrace } from "./record-trace.ts";

/** Frames are looked for up to here after the last movement, so that it is shown too. */
const SETTLE_MS = 200;
const MOVES = 60;
/** A finger's place comes about as often as the screen is drawn. */
const EVERY_MS = 1000 / 60;
const DRAGS = 3;

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A page that is dragged on, at its slowed-down processor. */
export interface DraggedPage {
  readonly page: Page;
  readonly protocol: CDPSession;
  readonly box: Box;
}

/** Right across the court and back towards the net, never twice the same place; the first step leaves a touch's reach. */
const placeAt = (box: Box, step: number): { x: number; y: number } => {
  const share = step === 0 ? 0 : 0.1 + (0.9 * step) / MOVES;
  return {
    x: Math.round(box.x + box.width * (0.3 + 0.4 * share)),
    y: Math.round(box.y + box.height * (0.85 - 0.6 * share)),
  };
};

/** One finger through the browser's own input path, at the pace of a hand; what it drew is taken away, not charted. */
const dragOnce = async ({ protocol, box }: DraggedPage): Promise<void> => {
  const touch = (type: "touchStart" | "touchMove" | "touchCancel", step?: number): Promise<unknown> =>
    protocol.send("Input.dispatchTouchEvent", {
      type,
      touchPoints: step === undefined ? [] : [placeAt(box, step)],
    });
  await touch("touchStart", 0);
  const begin = performance.now();
  const sent: Promise<unknown>[] = [];
  for (let step = 1; step <= MOVES; step += 1) {
    await wait(Math.max(0, begin + step * EVERY_MS - performance.now()));
    sent.push(touch("touchMove", step));
  }
  await Promise.all(sent);
  await wait(SETTLE_MS);
  await touch("touchCancel");
};

const traceDrag = async (browser: Browser, target: DraggedPage): Promise<DragTimes> => {
  let moves: readonly Move[] = [];
  const trace = await recordTrace(browser, async () => {
    await target.page.evaluate("dragProbe.start()");
    await dragOnce(target);
    moves = (await target.page.evaluate("dragProbe.stop()")) as Move[];
  });
  if (moves.length < MOVES / 2)
    throw new Error(`Only ${moves.length} of ${MOVES} movements reached the page.`);
  const times = dragTimes(trace, moves);
  if (!times.ok) throw new Error(times.error);
  return times.value;
};

/** Several drags in a row, as one sample. */
export const dragRun = async (browser: Browser, target: DraggedPage): Promise<DragTimes> => {
  await target.page.bringToFront();
  const drags: DragTimes[] = [];
  for (let i = 0; i < DRAGS; i += 1) drags.push(await traceDrag(browser, target));
  return {
    latenciesMs: drags.flatMap(({ latenciesMs }) => latenciesMs),
    framesMs: drags.flatMap(({ framesMs }) => framesMs),
  };
};

/** Draws one stroke that stays, as a person does: pressed, moved, lifted. */
export const drawThread = async (page: Page, box: Box, from: number, to: number): Promise<void> => {
  await page.mouse.move(box.x + box.width * from, box.y + box.height * (from < to ? 0.85 : 0.2));
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * to, box.y + box.height * (from < to ? 0.2 : 0.85), { steps: 4 });
  await page.mouse.up();
};
