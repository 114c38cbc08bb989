import { expect, type Page } from "@playwright/test";
import { drawStroke, enterCourt } from "../fixtures/chart-court.ts";
import { findSmallTargets } from "../fixtures/find-small-targets.ts";
import { findViolations } from "../fixtures/find-violations.ts";
import { picturePath } from "../fixtures/look-at.ts";
import { findLowContrast } from "./find-low-contrast.ts";
import { findOverlaps } from "./find-overlaps.ts";
import { allSent, answerStart, chooseInMore, OWN, padTest } from "./pad-day.ts";

const test = padTest("sizes");

const SIZES = [
  { width: 360, height: 640 },
  { width: 390, height: 844 },
  { width: 740, height: 360 },
  { width: 844, height: 390 },
  { width: 820, height: 1180 },
  { width: 1280, height: 800 },
] as const;

const HANDS = ["Right", "Left"] as const;

const press = (page: Page, name: string) => page.getByRole("button", { name, exact: true }).click();

/** A ball by the receiver, then one down the line by the charted player, whose questions then stand open. */
const drawLine = async (page: Page): Promise<void> => {
  await press(page, "First in");
  await drawStroke(page, { from: { x: -3, y: -12.4 }, to: { x: -2.8, y: 9.2 } }, "A");
  await expect(page.getByRole("button", { name: /^Ball 1/ })).toBeVisible();
};

const MOMENTS: readonly { readonly name: string; readonly reach: (page: Page) => Promise<void> }[] = [
  { name: "before", reach: async () => undefined },
  { name: "drawn", reach: drawLine },
  { name: "ended", reach: (page) => press(page, "Winner") },
  { name: "mending", reach: (page) => page.getByRole("button", { name: /^Ball 1/ }).click() },
];

/** The page is as high and as wide as its window, and so are the rows in it, as far as fingers go there in play. */
const findScrolling = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const { documentElement: root } = document;
    const found =
      root.scrollHeight > root.clientHeight + 1 ? [`page by ${root.scrollHeight - root.clientHeight}`] : [];
    if (root.scrollWidth > root.clientWidth) found.push("page sideways");
    for (const each of document.querySelectorAll("main, main > :not(h1), main > * > fieldset")) {
      if (each.clientHeight > 0 && each.scrollHeight > each.clientHeight + 2)
        found.push(
          `${each.getAttribute("aria-label") ?? each.tagName} by ${each.scrollHeight - each.clientHeight}`,
        );
    }
    return found;
  });

const faultsOf = async (page: Page): Promise<string[]> => [
  ...(await findScrolling(page)),
  ...(await findOverlaps(page)),
  ...(await findSmallTargets(page)),
];

test.describe("sizes and hands", () => {
  for (const level of ["Key balls", "Every ball"])
    test(`[PD68, PD69] every size and hand at ${level}: no small targets, nothing overlaps, nothing scrolls in play`, async ({
      day,
    }) => {
      const page = await day.newPhone();
      await enterCourt(page, day.product.url, await day.codeOf(level === "Key balls" ? 1 : 4), "Dana H.");
      await answerStart(page, OWN);
      await chooseInMore(page, "Level", level);
      await allSent(page);
      for (const { name: moment, reach } of MOMENTS) {
        await reach(page);
        for (const hand of HANDS) {
          await chooseInMore(page, "Holding hand", hand);
          await press(page, "Back to the court");
          for (const size of SIZES) {
            await page.setViewportSize(size);
            const name = `sizes-${level.slice(0, 3).toLowerCase()}-${moment}-${size.width}x${size.height}-${hand.toLowerCase()}`;
            await page.screenshot({ path: picturePath(name) });
            expect.soft(await faultsOf(page), name).toEqual([]);
          }
        }
      }
    });

  test("[PD68] the holding hand has Done under its thumb and is remembered; in the sun all new parts keep 7 to 1", async ({
    day,
  }) => {
    const page = await day.newPhone();
    await enterCourt(page, day.product.url, await day.codeOf(2), "Dana H.");
    await answerStart(page, OWN);
    const leftOf = async (name: RegExp | string) =>
      (await page.getByRole("button", { name, exact: typeof name === "string" }).boundingBox())?.x ??
      Number.NaN;
    expect(await leftOf(/^Done/)).toBeGreaterThan(await leftOf("Undo"));
    await chooseInMore(page, "Holding hand", "Left");
    await chooseInMore(page, "Screen", "Sun").catch(async () => {
      await page.getByRole("group", { name: "Screen" }).getByRole("button", { name: "Sun" }).click();
    });
    expect.soft(await findLowContrast(page, 7), "More in the sun").toEqual([]);
    expect.soft(await findViolations(page), "More").toEqual([]);
    await press(page, "Show the keys");
    await expect(page.getByRole("dialog", { name: "Keys" })).toBeVisible();
    expect.soft(await findLowContrast(page, 7), "keys in the sun").toEqual([]);
    expect.soft(await findViolations(page), "keys").toEqual([]);
    await page.screenshot({ path: picturePath("keys-sun-390") });
    await page.setViewportSize({ width: 1280, height: 800 });
    await page.screenshot({ path: picturePath("keys-sun-1280") });
    await press(page, "Back to the court");
    await page.reload();
    await expect(page.getByTestId("court")).toBeVisible();
    expect(await leftOf(/^Done/)).toBeLessThan(await leftOf("Undo"));
  });

  test("[PD70, PD72] this phone says whether its screen stays awake, and a switch stands for what it can do", async ({
    day,
  }) => {
    const page = await day.newPhone();
    await page.addInitScript(() => {
      const felt: number[] = [];
      Object.assign(window, { felt });
      Object.defineProperty(navigator, "vibrate", {
        value: (pattern: number[]) => felt.push(pattern.length),
      });
    });
    await enterCourt(page, day.product.url, await day.codeOf(3), "Dana H.");
    await answerStart(page, OWN);
    const felt = () => page.evaluate(() => (window as unknown as { felt: number[] }).felt.length);
    await press(page, "Ace");
    await page.getByTestId("done").click();
    await expect.poll(felt).toBe(1);
    await page.getByTestId("more").click();
    await expect(page.getByTestId("this-phone")).toContainText(
      /Screen kept awake: (yes|not now|this browser cannot)/,
    );
    const sound = page.getByRole("group", { name: "Tick to hear" });
    await expect(sound.getByRole("button", { name: "Off" })).toHaveAttribute("aria-pressed", "true");
    await page.getByRole("group", { name: "Tick in the hand" }).getByRole("button", { name: "Off" }).click();
    await press(page, "Back to the court");
    await press(page, "Ace");
    await page.getByTestId("done").click();
    await allSent(page);
    expect(await felt()).toBe(1);
  });
});
