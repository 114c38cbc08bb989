import { type BrowserContext, expect, type Page } from "@playwright/test";
import { COURT_1_POINTS } from "../day/points.ts";
import { chartPoint } from "../fixtures/chart-court.ts";
import { test } from "../fixtures/demo-product.ts";
import { picturePath } from "../fixtures/look-at.ts";
import { makeOneCourtDay, openPhone, startCharting } from "../fixtures/one-court-day.ts";
import { processIds } from "../fixtures/product.ts";
import { type ShapedLink, shapeLink } from "../fixtures/shape-link.ts";

const CHARTIST = "Ioan P.";
const BEFORE = COURT_1_POINTS.slice(0, 4);
const WITHOUT_NETWORK = COURT_1_POINTS.slice(4, 7);

/** Marks the page, so that a reload, which would lose the mark, is noticed. */
const mark = (page: Page): Promise<void> =>
  page.evaluate(() => document.documentElement.setAttribute("data-not-reloaded", ""));
const isMarked = (page: Page): Promise<boolean> =>
  page.evaluate(() => document.documentElement.hasAttribute("data-not-reloaded"));

test.describe("how far a board may be believed", () => {
  const contexts: BrowserContext[] = [];
  let board: Page;
  let boardLink: ShapedLink;
  let phone: Page;
  let phoneLink: ShapedLink;

  test.beforeAll(async ({ browser, demo }) => {
    test.setTimeout(600_000);
    const director = await demo.asDirector(browser);
    const desk = await director.newPage();
    const day = await makeOneCourtDay(desk, demo.url, {
      name: "Freshness",
      own: "Sorrel N.",
      opponent: "Visitor flint",
    });
    const opened = await openPhone(browser);
    contexts.push(director, opened.context);
    phone = opened.phone;
    phoneLink = await shapeLink(phone);
    await startCharting(phone, demo.url, day, CHARTIST);
    for (const line of BEFORE) await chartPoint(phone, line);

    board = await director.newPage();
    boardLink = await shapeLink(board);
    await board.goto(`${demo.url}/board/${day.dayId}`);
    await expect(board.getByTestId("figure")).toBeVisible();
    await mark(board);
  });
  test.afterAll(async () => {
    for (const context of contexts) await context.close();
  });

  test("[BD2, BD3, BD5, BD8, SY10] a phone that is cut off is soon not heard, then blind, and comes back", async () => {
    const tile = board.getByTestId("tile-1");
    await expect(tile).toHaveAttribute("data-freshness", "heard");
    await expect(tile.getByTestId("freshness")).toHaveText(/heard [0-9] s ago/);
    await expect(board.getByTestId("counts")).toHaveText("1 in play");

    phoneLink.lose("lane.append");
    for (const line of WITHOUT_NETWORK) await chartPoint(phone, line);
    await expect(phone.getByTestId("unsent")).toHaveText(/3 unsent/);
    await expect(tile.getByTestId("notes")).toHaveText("3 unsent when last heard");

    phoneLink.cut();
    await expect(tile.getByTestId("freshness")).toHaveText(/^not heard 1[0-2] s$/);
    await expect(tile).toHaveAttribute("data-freshness", "notHeard");
    await expect(board.getByTestId("counts")).toHaveText(/0 in play.*1 silent/);

    boardLink.passTime(90_000);
    await expect(tile).toHaveAttribute("data-freshness", "blind");
    await expect(tile.getByTestId("flag")).toHaveText(/^Blind phone silent \d+ s$/);
    await expect(tile.getByTestId("blind-note")).toHaveText(
      /^Score as heard at \d\d:\d\d\. Ask Ioan P\. on court\. 3 unsent when last heard\.$/,
    );
    await expect(tile.locator("svg").last()).toBeVisible();
    await expect(tile.getByTestId("figure")).toHaveCount(0);
    await expect(tile.getByTestId("freshness")).toHaveCount(0);
    await board.screenshot({ path: picturePath("board-blind") });

    phoneLink.restore();
    await expect(tile).toHaveAttribute("data-freshness", "heard", { timeout: 60_000 });
    await expect(phone.getByTestId("unsent")).toHaveText(/All sent/, { timeout: 60_000 });
    await expect(tile.getByTestId("figure")).toBeVisible();
    await expect(tile.getByTestId("notes")).toHaveCount(0);
    await expect(board.getByTestId("counts")).toHaveText("1 in play");
    expect(await isMarked(board)).toBe(true);
  });

  test("[BD10, MR1, MR2] a board that has lost the server says so over everything, and comes back by itself", async () => {
    const tile = board.getByTestId("tile-1");
    await expect(board.getByTestId("board")).toHaveAttribute("data-connection", "live");
    boardLink.cut();
    await expect(board.getByTestId("lost")).toHaveText(
      /^No connection to the server since \d\d:\d\d:\d\d\. This board shows what was known then\. Play goes on\./,
      { timeout: 20_000 },
    );
    await expect(board.getByTestId("board")).toHaveAttribute("data-connection", "stale");
    await expect(tile).toHaveAttribute("data-blind", "true");
    await expect(tile.getByTestId("figure")).toHaveCount(0);
    await expect(tile.getByTestId("freshness")).toHaveCount(0);
    await expect(board.getByTestId("counts")).toHaveCount(0);
    await board.screenshot({ path: picturePath("board-lost") });

    boardLink.restore();
    await expect(board.getByTestId("lost")).toHaveCount(0, { timeout: 60_000 });
    await expect(tile.getByTestId("figure")).toBeVisible();
    expect(await isMarked(board)).toBe(true);
  });

  test("[BD10, ST9, MR8] when live is killed boards and phones say so at once and go on by themselves", async ({
    demo,
  }) => {
    const demoDay = await (contexts[0] as BrowserContext).newPage();
    await demoDay.goto(`${demo.url}/board/${demo.dayId}`);
    await expect(demoDay.getByTestId("board")).toHaveAttribute("data-connection", "live");
    await expect(board.getByTestId("board")).toHaveAttribute("data-connection", "live");
    const before = processIds(demo.dataDir).live ?? Number.NaN;
    const lost = board.getByTestId("lost").waitFor();
    process.kill(before, "SIGKILL");
    await lost;
    await expect(board.getByTestId("lost")).toHaveCount(0, { timeout: 60_000 });
    await expect(board.getByTestId("tile-1")).toHaveAttribute("data-freshness", "heard", { timeout: 60_000 });
    expect(processIds(demo.dataDir).live).not.toBe(before);

    // The demonstration's phones go on too: scores move from here.
    await expect(demoDay.getByTestId("board")).toHaveAttribute("data-connection", "live");
    const scores = () => demoDay.getByTestId("score").allTextContents();
    const then = await scores();
    await expect.poll(scores, { timeout: 60_000 }).not.toEqual(then);
    expect(await isMarked(board)).toBe(true);
  });
});
