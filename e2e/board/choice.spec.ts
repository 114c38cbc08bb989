import type { Tile } from "@courtloom/protocol";
import { type BrowserContext, expect, type Page } from "@playwright/test";
import { test } from "../fixtures/demo-product.ts";
import { findViolations } from "../fixtures/find-violations.ts";
import { EVERYWHERE, lookAt, SIZES } from "../fixtures/look-at.ts";
import { type BoardFeed, feedBoard } from "./board-feed.ts";
import { boardTile } from "./board-tiles.ts";

const COURTS = 8;

const quietTiles = (page: Page): Promise<readonly (string | null)[]> =>
  page
    .locator("article[data-quiet]")
    .evaluateAll((tiles) => tiles.map((tile) => tile.getAttribute("data-testid")));

const placeOf = async (page: Page, court: number) => {
  const box = await page.getByTestId(`tile-${court}`).boundingBox();
  return box && { x: Math.round(box.x), y: Math.round(box.y) };
};

test.describe("what staff choose to see of a board", () => {
  let context: BrowserContext;
  let page: Page;
  let feed: BoardFeed;
  let first: readonly Tile[];

  test.beforeEach(async ({ browser, demo }) => {
    context = await demo.asDirector(browser);
    page = await context.newPage();
    await page.setViewportSize(SIZES.wall);
    const now = Date.now();
    first = Array.from({ length: COURTS }, (_, i) => boardTile(i, now));
    feed = await feedBoard(page, first);
    await page.goto(`${demo.url}/board/${demo.dayId}`);
    await expect(page.getByTestId("tile-8")).toBeVisible();
  });
  test.afterEach(async () => context.close());

  test("[BD43, BD44, BD47] my courts and my players stand out in their places, by keyboard, through a reload", async () => {
    const panel = page.getByTestId("panel");
    await page.getByText("Choose my courts and players").focus();
    await page.keyboard.press("Enter");
    const courts = panel.getByRole("group", { name: "My courts, this day" });
    await courts.getByRole("checkbox", { name: "3", exact: true }).focus();
    await page.keyboard.press("Space");
    await courts.getByRole("checkbox", { name: "6", exact: true }).check();
    await panel
      .getByRole("group", { name: "My players, every day" })
      .getByRole("checkbox", { name: "Noor V." })
      .check();
    await expect(panel).toContainText("Kept on this device, for your account.");

    const before = await placeOf(page, 6);
    await panel.getByRole("radio", { name: "All courts" }).focus();
    await page.keyboard.press("ArrowRight");
    await expect(panel.getByRole("radio", { name: "My players" })).toBeChecked();
    expect(await quietTiles(page)).toEqual([
      "tile-2",
      "tile-3",
      "tile-4",
      "tile-5",
      "tile-6",
      "tile-7",
      "tile-8",
    ]);
    await page.keyboard.press("ArrowRight");
    await expect(panel.getByRole("radio", { name: "My courts" })).toBeChecked();
    expect(await quietTiles(page)).toEqual(["tile-1", "tile-2", "tile-4", "tile-5", "tile-7", "tile-8"]);
    expect(await placeOf(page, 6)).toEqual(before);
    await expect(page.getByTestId("tile-2")).not.toHaveAttribute("data-alert");
    await expect(page.getByTestId("tile-1").getByTestId("figure")).toBeHidden();
    await expect(page.getByTestId("tile-1").getByTestId("score")).toHaveText(/Noor V\./);
    await lookAt(page, "board-my-courts", [...EVERYWHERE, { size: "wall", scheme: "dark" }]);

    await page.setViewportSize(SIZES.wall);
    await page.reload();
    await expect(page.getByTestId("panel").getByRole("radio", { name: "My courts" })).toBeChecked();
    await expect.poll(() => quietTiles(page)).toHaveLength(6);

    await page.getByRole("radio", { name: "Alerts only" }).check();
    expect(await quietTiles(page)).toEqual(["tile-1", "tile-3", "tile-4", "tile-6", "tile-7", "tile-8"]);
    expect(await findViolations(page)).toEqual([]);
  });

  test("[BD43, BD47] a phone folds what was not asked for, in the order of the courts", async () => {
    await page.setViewportSize(SIZES.phone);
    await page.getByTestId("open-panel").click();
    const sheet = page.getByRole("dialog");
    await sheet.getByRole("radio", { name: "Alerts only" }).check();
    await lookAt(page, "board-sheet", [
      { size: "phone", scheme: "light", thorough: true },
      { size: "smallPhone", scheme: "dark" },
    ]);
    await page.setViewportSize(SIZES.phone);
    await page.keyboard.press("Escape");
    await expect(sheet).toHaveCount(0);
    await expect(page.getByTestId("open-panel")).toContainText("Alerts only");
    await expect(page.getByTestId("open-panel")).toBeFocused();
    await expect(page.getByTestId("fold")).toHaveText([
      "Court 1 not shown",
      "Courts 3 to 4 not shown",
      "Courts 6 to 8 not shown",
    ]);
    await expect(page.getByTestId("tile-3")).toBeHidden();
    await expect(page.getByTestId("tile-5")).toBeVisible();
  });

  test("[BD45, BD46] what changed since the last look, until it is marked as read", async () => {
    const panel = page.getByTestId("panel");
    await expect(panel.getByTestId("no-changes")).toBeVisible();
    const [one, , , , , , , eight] = first;
    if (!one?.staff || !eight?.score) throw new Error("the day has other courts");
    const { progress } = one.staff;
    const later = { points: progress.points + 6, breaks: { A: progress.breaks.A + 1, B: 0 }, suspensions: 0 };
    feed.send({ ...one, pos: 46, staff: { ...one.staff, chartist: "Dana H.", progress: later } });
    feed.send({ ...eight, pos: 41, state: "playing" });
    await expect(panel.getByTestId("change-1")).toHaveText(
      "Court 16 points, 1 break by Noor V., Dana H. charts",
    );
    await expect(panel.getByTestId("change-8")).toHaveText("Court 8play resumed");
    await page.reload();
    await expect(panel.getByTestId("change-1")).toContainText("6 points");
    await lookAt(page, "board-changed", [{ size: "wall", scheme: "dark", thorough: true }]);

    await panel.getByRole("button", { name: "Mark as read" }).click();
    await expect(panel.getByTestId("no-changes")).toBeVisible();
  });

  test("[BD40] a change of ends with the time that is left", async () => {
    const [one] = first;
    if (!one?.staff) throw new Error("court 1 is not charted");
    const ends = page.getByTestId("tile-1").getByTestId("ends");
    await expect(ends).toContainText("Change after this game");
    const pause = { kind: "rest", change: true, allowedSeconds: 90, sinceMs: Date.now() - 20_000 } as const;
    feed.send({ ...one, pos: 41, staff: { ...one.staff, ends: { pause } } });
    await expect(ends).toContainText(/Change of ends, [67]\d s left/);
  });
});
