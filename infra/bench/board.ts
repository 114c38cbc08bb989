import { freePort } from "@courtloom/db/embedded";
import type { Browser, Page } from "@playwright/test";
import { openFrontDoor } from "../start/front-door.ts";
import { withBenchDay } from "./bench-day.ts";
import { type BoardFeedServer, COURTS, serveBoardFeed, UPDATES_PER_SECOND } from "./board-feed.ts";
import { MARK } from "./drag-latencies.ts";
import { CPU_SLOW_DOWN } from "./drag-pages.ts";
import { judge } from "./judge.ts";
import { mainThreadTasks } from "./main-thread-tasks.ts";
import { openBrowser } from "./open-browser.ts";
import type { Bench, Outcome } from "./outcome.ts";
import { quantile } from "./quantile.ts";
import { recordTrace } from "./record-trace.ts";

const NAME = "board";
const REPEATS = 5;
const RUN_MS = 5_000;
const WALL = { width: 1920, height: 1080 } as const;
/** Where the browser tells each of its tasks. */
const TASKS = ["disabled-by-default-devtools.timeline"];
/** From here the browser itself calls a task long. */
const LONG_MS = 50;

interface Repeat {
  readonly board: readonly number[];
  readonly floor: readonly number[];
}

const openWall = async (browser: Browser, url: string, cookies: Cookies): Promise<Page> => {
  const context = await browser.newContext({ viewport: WALL });
  await context.addCookies(cookies);
  const page = await context.newPage();
  await page.goto(url);
  await page.getByTestId(`tile-${COURTS}`).waitFor();
  const protocol = await context.newCDPSession(page);
  await protocol.send("Emulation.setCPUThrottlingRate", { rate: CPU_SLOW_DOWN });
  return page;
};
type Cookies = Parameters<Awaited<ReturnType<Browser["newContext"]>>["addCookies"]>[0];

const tasksOf = async (browser: Browser, page: Page, feed: BoardFeedServer): Promise<readonly number[]> => {
  await page.bringToFront();
  const play = async (): Promise<void> => {
    await page.evaluate(`performance.mark(${JSON.stringify(MARK)})`);
    await feed.play(RUN_MS);
  };
  const trace = await recordTrace(browser, play, TASKS);
  const tasks = mainThreadTasks(trace);
  if (!tasks.ok) throw new Error(tasks.error);
  return tasks.value;
};

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const share = (tasks: readonly number[]): string => `${((100 * sum(tasks)) / RUN_MS).toFixed(0)} %`;

const sayPage = (name: string, runs: readonly (readonly number[])[]): void => {
  const tasks = runs.flat();
  const longest = [...tasks].sort((a, b) => b - a).slice(0, 5);
  console.log(
    `  ${name}: longest tasks ${longest.map((ms) => ms.toFixed(1)).join(", ")} ms; ` +
      `${tasks.filter((ms) => ms >= LONG_MS).length} of ${LONG_MS} ms or more; p99 ${quantile(tasks, 0.99).toFixed(1)} ms; ` +
      `main thread busy ${runs.map(share).join(", ")}`,
  );
};

const say = (repeats: readonly Repeat[]): Outcome => {
  const turns = repeats.map(({ board, floor }) => ({ ours: sum(board), floor: sum(floor) }));
  const { ratio, spread, verdict } = judge(turns, undefined);
  sayPage(
    "board",
    repeats.map(({ board }) => board),
  );
  sayPage(
    "page with a number per court",
    repeats.map(({ floor }) => floor),
  );
  console.log(
    `  busy time, ratio ${ratio.toFixed(1)}, without a bar; spread of the floor ${spread.toFixed(2)}`,
  );
  return { name: NAME, verdict };
};

/** One page at a time is open, so that nothing else hears the messages. */
const measure = (browser: Browser, feed: BoardFeedServer): Promise<Outcome> =>
  withBenchDay(browser, NAME, async ({ product, day, directorCookies }) => {
    const port = await freePort();
    const at = { web: Number(new URL(product.url).port), live: feed.port };
    const door = await openFrontDoor({ port, host: "127.0.0.1", routeTo: (part) => at[part] });
    if (!door.ok) throw new Error(door.error.message);
    try {
      const url = `http://127.0.0.1:${port}/board/${day.dayId}`;
      const repeats: Repeat[] = [];
      for (let i = 0; i < REPEATS; i += 1) {
        const floorPage = await openWall(browser, `http://127.0.0.1:${feed.port}/`, directorCookies);
        const floor = await tasksOf(browser, floorPage, feed);
        await floorPage.context().close();
        const boardPage = await openWall(browser, url, directorCookies);
        const board = await tasksOf(browser, boardPage, feed);
        await boardPage.context().close();
        repeats.push({ board, floor });
      }
      return say(repeats);
    } finally {
      await door.value.close();
    }
  });

/**
 * A wall of 64 courts, each changing four times a second, at a processor slowed down 4 times, against a page that
 * gets the same messages and paints a number per court. Spec BN10.
 */
export const benchBoard: Bench = async () => {
  const browser = await openBrowser();
  const feed = await serveBoardFeed();
  try {
    console.log(
      `board: ${COURTS} courts, ${UPDATES_PER_SECOND} updates a second each, processor slowed down ${CPU_SLOW_DOWN} times`,
    );
    return [await measure(browser, feed)];
  } finally {
    await feed.stop();
    await browser.close();
  }
};
