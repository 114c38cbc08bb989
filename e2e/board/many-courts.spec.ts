import { type BrowserContext, expect, type Page } from "@playwright/test";
import { test } from "../fixtures/demo-product.ts";
import { findSmallText } from "../fixtures/find-small-text.ts";
import { findViolations } from "../fixtures/find-violations.ts";
import { type Look, lookAt, SIZES } from "../fixtures/look-at.ts";
import { feedBoard } from "./board-feed.ts";
import { boardTile, publicTile } from "./board-tiles.ts";

const LEAST_X_HEIGHT_PX = 9;
const WALLS: readonly Look[] = [
  { size: "wall", scheme: "dark" },
  { size: "wall", scheme: "light" },
];

const heightOver = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollHeight - document.documentElement.clientHeight);

/** Test ids of the tiles that the page's own scripts changed since it was first asked. */
const watchTiles = async (page: Page): Promise<() => Promise<readonly string[]>> => {
  await page.evaluate(() => {
    const changed = new Set<string>();
    const observer = new MutationObserver((records) => {
      for (const { target } of records) {
        const element = target instanceof Element ? target : target.parentElement;
        // Ages tick on every tile each second; what is asked here is who follows a court's change.
        if (element?.closest('[data-testid="freshness"]')) continue;
        changed.add(element?.closest("article")?.dataset.testid ?? "outside");
      }
    });
    const board = document.querySelector('[data-testid="courts"]');
    if (board)
      observer.observe(board, { subtree: true, childList: true, attributes: true, characterData: true });
    Object.assign(window, { changedTiles: () => [...changed] });
  });
  return () => page.evaluate("changedTiles()") as Promise<readonly string[]>;
};

test.describe("a day of many courts", () => {
  let context: BrowserContext;
  let page: Page;

  test.beforeEach(async ({ browser, demo }) => {
    context = await demo.asDirector(browser);
    page = await context.newPage();
    await page.setViewportSize(SIZES.wall);
  });
  test.afterEach(async () => context.close());

  for (const courts of [16, 32, 64]) {
    test(`[BD10, BD41, BD42] a wall shows ${courts} courts at once, all of it legible from four metres`, async ({
      demo,
    }) => {
      const now = Date.now();
      await feedBoard(
        page,
        Array.from({ length: courts }, (_, i) => boardTile(i, now)),
      );
      await page.goto(`${demo.url}/board/${demo.dayId}`);
      await expect(page.getByTestId(`tile-${courts}`)).toBeVisible();
      expect(await heightOver(page)).toBe(0);
      expect(await findSmallText(page, LEAST_X_HEIGHT_PX)).toEqual([]);
      await lookAt(page, `board-${courts}`, [
        ...WALLS,
        { size: "desktop", scheme: "dark" },
        { size: "phone", scheme: "light" },
      ]);
      expect(await findViolations(page)).toEqual([]);
      const alert = page.getByTestId("tile-2");
      await expect(alert).toHaveAttribute("data-alert", "standing");
      await expect(alert.getByTestId("flag")).toContainText("Alert");
      await expect(page.getByTestId("tile-5").getByTestId("flag")).toContainText("Easing");
    });
  }

  test("[BD41, LV10] a public wall of 64 courts has scores alone", async ({ demo }) => {
    const now = Date.now();
    await feedBoard(
      page,
      Array.from({ length: 64 }, (_, i) => publicTile(i, now)),
    );
    await page.goto(`${demo.url}/wall/${demo.dayId}`);
    await expect(page.getByTestId("tile-64")).toBeVisible();
    expect(await heightOver(page)).toBe(0);
    expect(await findSmallText(page, LEAST_X_HEIGHT_PX)).toEqual([]);
    await expect(page.getByTestId("figure")).toHaveCount(0);
    await expect(page.getByTestId("ends")).toHaveCount(0);
    await expect(page.getByTestId("panel")).toHaveCount(0);
    await expect(page.getByTestId("open-panel")).toHaveCount(0);
    await lookAt(page, "wall-64", WALLS);
  });

  test("[BD50] a change of one court changes that court's tile and no other", async ({ demo }) => {
    // Heard in an hour counts as heard just now: so no tile changes by time alone.
    const now = Date.now() + 3_600_000;
    const tiles = Array.from({ length: 64 }, (_, i) => boardTile(i, i % 8 === 2 ? now + 94_000 : now));
    const feed = await feedBoard(page, tiles);
    await page.goto(`${demo.url}/board/${demo.dayId}`);
    const tile = page.getByTestId("tile-10");
    await expect(tile).toBeVisible();
    const changed = await watchTiles(page);
    const old = boardTile(9, now);
    if (!old.score) throw new Error("court 10 has no score");
    for (const points of ["15", "30", "40"]) {
      feed.send({ ...old, pos: old.pos + 1, score: { ...old.score, points: { A: points, B: "0" } } });
      await expect(tile.getByTestId("score")).toContainText(` ${points},`);
    }
    expect(await changed()).toEqual(["tile-10"]);
  });
});
