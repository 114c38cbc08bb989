import { foldLog, type LoggedEntry } from "@courtloom/match-log";
import { expect, type Page } from "@playwright/test";
import { enterCourt } from "../fixtures/chart-court.ts";
import { findSmallTargets } from "../fixtures/find-small-targets.ts";
import { findViolations } from "../fixtures/find-violations.ts";
import { picturePath } from "../fixtures/look-at.ts";
import { findLowContrast } from "./find-low-contrast.ts";
import { OWN, type PadDay, PHONE, padTest } from "./pad-day.ts";
import { untilKept } from "./phone-outbox.ts";

const test = padTest("two-courts");

const button = (page: Page, name: string | RegExp) =>
  page.getByRole("button", { name, ...(typeof name === "string" ? { exact: true } : {}) });
const press = (page: Page, name: string | RegExp) => button(page, name).click();
const shown = (page: Page, id: string) => page.getByTestId(id).filter({ visible: true });
const courtName = (page: Page, name: string) => expect(shown(page, "court-name")).toHaveText(name);
const switchTo = async (page: Page, name: string): Promise<void> => {
  await page
    .getByRole("navigation", { name: "Courts" })
    .getByRole("button", { name: new RegExp(name) })
    .click();
  await courtName(page, name);
};
const beside = (page: Page) => page.getByRole("navigation", { name: "Courts" }).getByRole("button");
const sent = (page: Page) => expect(shown(page, "unsent")).toHaveText("All sent", { timeout: 30_000 });

const answer = async (page: Page): Promise<void> => {
  await page.getByRole("group", { name: "Who serves first?" }).getByRole("button", { name: OWN }).click();
  const ends = page.getByRole("group", { name: "Who is at the near or left end?" });
  await ends.getByRole("button", { name: OWN }).click();
  await press(page, "Start charting");
  await expect(button(page, "More")).toBeVisible();
};

/** Serves of a whole point, by the buttons: an ace or a double fault of the server. */
const chart = async (page: Page, outcome: "ace" | "double"): Promise<void> => {
  if (outcome === "double") await press(page, "Fault");
  await press(page, outcome === "ace" ? "Ace" : "Double fault");
  await press(page, /^Done/);
  await expect(button(page, "Done when it is said who won")).toBeVisible();
};

const told = (log: readonly LoggedEntry[]): string[] => {
  expect(new Set(log.map(({ entry }) => entry.id)).size).toBe(log.length);
  const folded = foldLog(log);
  if (!folded.ok) throw new Error(folded.error);
  expect(folded.value.setAside).toEqual([]);
  return folded.value.points.map(
    ({ point }) => `${point.level} ${point.winner} ${point.serve?.outcome ?? "not seen"}`,
  );
};

/** The phone of a signed-in member of staff, on the first court and with the second beside it. */
const openBoth = async (day: PadDay): Promise<Page> => {
  const page = await day.newPhone();
  await page.context().addCookies(await day.desk.context().cookies());
  await page.goto(`${day.product.url}/pad?match=${await day.matchOf(1)}`);
  await answer(page);
  await press(page, "More");
  await press(page, "Add a second court");
  const list = page.getByRole("group", { name: "Matches on other courts" });
  await expect(list.getByRole("button")).toHaveCount(7);
  await expect(list.getByRole("button", { name: /Court 1:/ })).toHaveCount(0);
  expect.soft(await findViolations(page), "the list of courts").toEqual([]);
  await list.getByRole("button", { name: /Court 2:/ }).click();
  await courtName(page, "Court 2");
  await answer(page);
  return page;
};

test.describe("two courts on one phone", () => {
  test("[PD74, PD75, PD76] each keeps its level, its half-entered point and its unsent; reload and no signal open both", async ({
    day,
  }) => {
    const page = await openBoth(day);
    await chart(page, "ace");
    await expect(beside(page)).toContainText(/Court 1.*0–0 0–0/);
    await press(page, "Fault");
    await switchTo(page, "Court 1");
    // Another level here; the other court keeps its own.
    await press(page, /^Level:/);
    await press(page, "Every ball");
    await press(page, "First in");
    await expect(beside(page)).toContainText(/Court 2.*0–0 15–0/);
    await page.screenshot({ path: picturePath("two-courts-390") });
    expect.soft(await findViolations(page), "two courts").toEqual([]);
    expect.soft(await findSmallTargets(page), "two courts").toEqual([]);

    await switchTo(page, "Court 2");
    await expect(button(page, "Second in")).toHaveAttribute("aria-pressed", "false");
    await expect(button(page, "Level: Key balls. Change")).toBeVisible();
    await page.reload();
    await courtName(page, "Court 2");
    await expect(button(page, "Second in")).toBeVisible();
    await switchTo(page, "Court 1");
    await expect(button(page, "First in")).toHaveAttribute("aria-pressed", "true");
    await expect(button(page, "Level: Every ball. Change")).toBeVisible();

    await untilKept(page);
    // Nothing of the server is reached from here on, and the page is opened anew meanwhile.
    await page.context().setOffline(true);
    await press(page, "Ace");
    await press(page, /^Done/);
    await chart(page, "double");
    await switchTo(page, "Court 2");
    await expect(beside(page)).toContainText("2 unsent");
    await press(page, "Double fault");
    await press(page, /^Done/);
    await expect(shown(page, "unsent")).toHaveText("1 unsent");
    await page.reload();
    await courtName(page, "Court 2");
    await expect(shown(page, "unsent")).toHaveText("1 unsent");
    await expect(beside(page)).toContainText("2 unsent");
    await chart(page, "ace");
    await expect(shown(page, "unsent")).toHaveText("2 unsent");
    await page.context().setOffline(false);
    await sent(page);
    await expect(beside(page)).not.toContainText("unsent");
    await switchTo(page, "Court 1");
    await sent(page);
    expect(told(await day.logOf(1))).toEqual(["every A ace", "every B doubleFault"]);
    expect(told(await day.logOf(2))).toEqual(["key A ace", "key B doubleFault", "key A ace"]);
  });

  test("[PD77] fits every size in the sun, changes over by a key, and one court is charted again", async ({
    day,
  }) => {
    const page = await day.newPhone();
    await page.context().addCookies(await day.desk.context().cookies());
    await page.goto(`${day.product.url}/pad?match=${await day.matchOf(3)}`);
    await answer(page);
    await press(page, "More");
    await press(page, "Add a second court");
    await press(page, /Court 4:/);
    await answer(page);
    await press(page, "More");
    await press(page, "Sun");
    await press(page, "Back to the court");
    for (const size of [
      { width: 360, height: 640 },
      { width: 740, height: 360 },
      { width: 820, height: 1180 },
      { width: 1280, height: 800 },
      PHONE,
    ]) {
      await page.setViewportSize(size);
      const name = `two-courts-sun-${size.width}`;
      await page.screenshot({ path: picturePath(name) });
      expect.soft([...(await findLowContrast(page, 7)), ...(await findSmallTargets(page))], name).toEqual([]);
      const tall = await page.evaluate(() => document.documentElement.scrollHeight - innerHeight);
      expect.soft(tall, name).toBeLessThanOrEqual(1);
    }
    await page.keyboard.press("y");
    await courtName(page, "Court 3");
    await press(page, "More");
    await press(page, /close the second/);
    await expect(beside(page)).toHaveCount(0);
    await courtName(page, "Court 3");
    await page.reload();
    await expect(button(page, "More")).toBeVisible();
    await expect(beside(page)).toHaveCount(0);
  });

  test("[PD74] a helper with a code has one court", async ({ day }) => {
    const page = await day.newPhone();
    await enterCourt(page, day.product.url, await day.codeOf(5), "Dana H.");
    await answer(page);
    await press(page, "More");
    await expect(page.getByRole("heading", { name: "This phone" })).toBeVisible();
    await expect(page.getByRole("heading", { name: "Second court" })).toHaveCount(0);
  });
});
