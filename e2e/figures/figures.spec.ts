import { expect, type Page } from "@playwright/test";
import { test } from "../fixtures/demo-product.ts";
import { EVERYWHERE, lookAt, SIZES } from "../fixtures/look-at.ts";

const openPlayer = async (page: Page, url: string, place = ""): Promise<void> => {
  await page.setViewportSize(SIZES.desktop);
  await page.goto(`${url}/players`);
  const first = page.getByRole("main").getByRole("listitem").first().getByRole("link").first();
  const href = await first.getAttribute("href");
  await page.goto(`${url}${href}${place}`);
};

const standing = (page: Page) => page.getByTestId("standing");

test.describe("a player of two seasons", () => {
  test("[PF1, PF6, PF7] figures, filters in the address, none that fits, and back", async ({
    demo,
    browser,
  }) => {
    const context = await demo.asDirector(browser);
    const page = await context.newPage();
    await openPlayer(page, demo.url);
    await expect(standing(page)).toHaveText(/^\d+ matches, \d+ points\.$/, { timeout: 30_000 });
    const all = await standing(page).textContent();
    await expect(page.getByTestId("cost-points")).toBeVisible({ timeout: 60_000 });
    await expect(page.getByTestId("biggest").getByRole("listitem").first()).toBeVisible();
    await lookAt(page, "player", EVERYWHERE);
    await page.setViewportSize(SIZES.desktop);

    await page.getByTestId("filters").locator("summary").click();
    await lookAt(page, "player-filters", EVERYWHERE.slice(0, 3));
    await page.setViewportSize(SIZES.desktop);
    await page.getByLabel("Opponents").selectOption({ index: 1 });
    await expect(page).toHaveURL(/opponent=/);
    await expect(standing(page)).not.toHaveText(all ?? "");
    await page.goBack();
    await expect(standing(page)).toHaveText(all ?? "");
    await page.getByLabel("To", { exact: true }).fill("2001-01-01");
    await expect(page.getByTestId("nothing-fits")).toContainText("No match fits these filters.");
    await lookAt(page, "player-nothing-fits", EVERYWHERE.slice(0, 2));
    await page.setViewportSize(SIZES.desktop);
    await page.getByTestId("nothing-fits").getByRole("button", { name: "Count all matches" }).click();
    await expect(standing(page)).toHaveText(all ?? "");
    await context.close();
  });

  test("[PF8] points behind a figure open over the page, more of them on asking, and lead to the court", async ({
    demo,
    browser,
  }) => {
    const context = await demo.asDirector(browser);
    const page = await context.newPage();
    await openPlayer(page, demo.url);
    await page.getByTestId("figure-lineMissed").click({ timeout: 30_000 });
    const dialog = page.getByRole("dialog", { name: "Line balls missed" });
    await expect(dialog.getByTestId("point").first()).toBeVisible();
    const shown = await dialog.getByTestId("point").count();
    await dialog.getByRole("button", { name: "Show more" }).click();
    await expect.poll(() => dialog.getByTestId("point").count()).toBeGreaterThan(shown);
    await dialog
      .getByRole("link", { name: /^Court page/ })
      .first()
      .click();
    await expect(page).toHaveURL(/\/court\/.+\?point=/);
    await expect(page.locator('[data-testid="log"] [aria-current="true"]')).toBeInViewport();
    await page.goBack();
    await expect(dialog).toBeVisible();
    await context.close();
  });

  test("[PF13, PF15] the map: a place opens its two shuttles, its points and goes back", async ({
    demo,
    browser,
  }) => {
    const context = await demo.asDirector(browser);
    const page = await context.newPage();
    await openPlayer(page, demo.url, "/line-map");
    const spot = page.getByTestId("spot-behindBaseline-right");
    await expect(spot).toHaveText(/\d+ line, \d+ kept/, { timeout: 60_000 });
    await expect(page.getByRole("region", { name: /half of the court/ }).getByRole("button")).toHaveCount(6);
    await lookAt(page, "line-map", EVERYWHERE);
    await page.setViewportSize(SIZES.desktop);
    await spot.click();
    const panel = page.getByTestId("spot-panel");
    await expect(panel.getByTestId("won-line")).toContainText(/\d+ of \d+ balls/);
    await expect(panel.getByTestId("won-ink")).toContainText(/\d+ of \d+ balls/);
    await lookAt(page, "line-map-spot", EVERYWHERE);
    await page.setViewportSize(SIZES.desktop);
    await panel.getByRole("button", { name: "See these balls in their points" }).click();
    await expect(page.getByRole("dialog").getByTestId("point").first()).toBeVisible();
    await page.goBack();
    await expect(page.getByRole("dialog")).toBeHidden();
    await expect(panel).toBeVisible();
    await page.goBack();
    await expect(panel).toBeHidden();
    await context.close();
  });

  test("[PF10] waiting, refused and no connection are said, and tried again", async ({ demo, browser }) => {
    const context = await demo.asDirector(browser);
    const page = await context.newPage();
    let release = (): void => undefined;
    const held = new Promise<void>((resolve) => {
      release = resolve;
    });
    await page.route("**/api/trpc/figures.player*", async (route) => {
      await held;
      await route.abort();
    });
    await openPlayer(page, demo.url);
    await expect(page.getByTestId("waiting")).toContainText("Counting the figures of");
    release();
    await expect(page.getByRole("alert").filter({ hasText: "No connection to the server." })).toBeVisible({
      timeout: 30_000,
    });
    await lookAt(page, "player-no-connection", EVERYWHERE.slice(0, 2));
    await page.unroute("**/api/trpc/figures.player*");
    await page.setViewportSize(SIZES.desktop);
    await page.getByRole("main").getByRole("button", { name: "Try again" }).first().click();
    await expect(standing(page)).toBeVisible({ timeout: 30_000 });
    await context.clearCookies();
    await page.goto(page.url());
    await expect(page).toHaveURL(/\/sign-in\?from=/);
    await context.close();
  });
});
