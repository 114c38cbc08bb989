import { type BrowserContext, expect, type Page } from "@playwright/test";
import { test } from "../fixtures/demo-product.ts";
import { findSmallText } from "../fixtures/find-small-text.ts";
import { EVERYWHERE, EVERYWHERE_AND_WALL, type Look, lookAt, SIZES } from "../fixtures/look-at.ts";
import { enterWall, readWallCode } from "../fixtures/open-wall.ts";

/** Read from four metres: no letter of a wall is lower, in px at 1920 x 1080. */
const LEAST_X_HEIGHT_PX = 9;

/** A wall is dark unless the device's theme says otherwise. */
const WALL_AT_NIGHT: readonly Look[] = [
  { size: "phone", scheme: "dark", thorough: true },
  { size: "smallPhone", scheme: "dark" },
  { size: "desktop", scheme: "dark" },
  { size: "wall", scheme: "dark" },
];
const WALL_BY_DAY: readonly Look[] = [
  { size: "phone", scheme: "light" },
  { size: "smallPhone", scheme: "light" },
  { size: "desktop", scheme: "light" },
  { size: "wall", scheme: "light", thorough: true },
];

const chooseTheme = (screen: BrowserContext, url: string, theme: "light" | "dark"): Promise<void> =>
  screen.addCookies([{ name: "courtloom_theme", value: theme, url }]);

/** Every screen of the demonstration day as staff and visitors meet it. The pad is in pad-screens.spec.ts. */
test.describe("screens", () => {
  let context: BrowserContext;
  let page: Page;

  test.beforeAll(async ({ browser, demo }) => {
    context = await demo.asDirector(browser);
    page = await context.newPage();
  });
  test.afterAll(async () => context?.close());

  test("[BD1, BD4, BD5, BD6, BD10] the staff board serves phones, desktops and walls, light and dark", async ({
    demo,
  }) => {
    await page.goto(`${demo.url}/board/${demo.dayId}`);
    await expect(page.getByTestId("figure").first()).toBeVisible();
    await lookAt(page, "board", EVERYWHERE_AND_WALL);
    expect(await findSmallText(page, LEAST_X_HEIGHT_PX)).toEqual([]);
  });

  test("[BD1, BD10] a public wall, opened with its code on a screen without an account, is read from four metres", async ({
    browser,
    demo,
  }) => {
    await page.goto(`${demo.url}/desk/${demo.dayId}`);
    const code = await readWallCode(page);
    const screen = await browser.newContext({ viewport: SIZES.wall });
    const wall = await screen.newPage();
    await enterWall(wall, demo.url, code);
    await expect(wall).toHaveURL(`${demo.url}/wall/${demo.dayId}`);
    await expect(wall.getByTestId("score").first()).toBeAttached();
    await lookAt(wall, "wall", WALL_AT_NIGHT);
    expect(await findSmallText(wall, LEAST_X_HEIGHT_PX)).toEqual([]);
    await chooseTheme(screen, demo.url, "light");
    await wall.reload();
    await expect(wall.getByTestId("score").first()).toBeAttached();
    await lookAt(wall, "wall", WALL_BY_DAY);
    await screen.close();
  });

  test("[BD14] a wrong wall code is told in a sentence, at every size", async ({ browser, demo }) => {
    const screen = await browser.newContext();
    const wall = await screen.newPage();
    await enterWall(wall, demo.url, "ZZZ 222");
    await expect(wall.getByText("There is no such code. Check it with the desk.")).toBeVisible();
    await lookAt(wall, "wall-entry", WALL_AT_NIGHT);
    await chooseTheme(screen, demo.url, "light");
    await wall.reload();
    await lookAt(wall, "wall-entry", WALL_BY_DAY);
    await screen.close();
  });

  test("[BD2, BD11, BD12, BD13] a court's page serves every size, light and dark", async ({ demo }) => {
    await page.goto(`${demo.url}/board/${demo.dayId}`);
    await page.getByTestId("tile-1").getByRole("link").click();
    await expect(page.getByTestId("figures-A")).toBeVisible();
    await lookAt(page, "court", EVERYWHERE);
  });

  test("[WB4, WB6] the desk's days and the desk of a day serve every size, light and dark", async ({
    demo,
  }) => {
    await page.goto(`${demo.url}/desk`);
    await expect(page.getByRole("heading", { name: "Days" })).toBeVisible();
    await lookAt(page, "desk", EVERYWHERE);

    await page.goto(`${demo.url}/desk/${demo.dayId}`);
    await page.getByRole("region", { name: "Court 2" }).getByText("Add a match").click();
    await lookAt(page, "desk-day", EVERYWHERE);
  });

  test("[WB5, WB9] signing in serves every size, and follows the device or the person's choice", async ({
    browser,
    demo,
  }) => {
    const visitor = await browser.newContext();
    const door = await visitor.newPage();
    await door.goto(`${demo.url}/sign-in`);
    await lookAt(door, "sign-in", EVERYWHERE);

    const ground = () => door.evaluate(() => getComputedStyle(document.body).backgroundColor);
    await door.emulateMedia({ colorScheme: "light" });
    const light = await ground();
    await door.getByLabel("Theme of this device").selectOption("dark");
    await expect.poll(ground).not.toBe(light);
    await expect.poll(async () => (await visitor.cookies()).some(({ value }) => value === "dark")).toBe(true);
    await door.reload();
    expect(await ground()).not.toBe(light);
    await visitor.close();
  });
});
