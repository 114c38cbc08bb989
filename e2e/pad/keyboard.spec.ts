import { foldLog, type LoggedEntry } from "@courtloom/match-log";
import { expect, type Locator, type Page } from "@playwright/test";
import { enterCourt } from "../fixtures/chart-court.ts";
import { findViolations } from "../fixtures/find-violations.ts";
import { allSent, OWN, type PadDay, padTest } from "./pad-day.ts";

const test = padTest("keyboard");
const LAPTOP = { width: 1280, height: 800 };

const button = (page: Page, name: string | RegExp) =>
  page.getByRole("button", { name, ...(typeof name === "string" ? { exact: true } : {}) });
const score = (page: Page) => page.getByRole("region", { name: "Score" });
const strip = (page: Page, says: string | RegExp) =>
  expect(page.getByRole("status").filter({ hasText: says })).toBeVisible();
const chips = (page: Page) => page.getByRole("list", { name: "Balls of this point" }).getByRole("button");

/** Presses keys one after another, as fast as they come. */
const type = async (page: Page, ...keys: string[]): Promise<void> => {
  for (const key of keys) await page.keyboard.press(key);
};

const noViolations = async (page: Page, where: string): Promise<void> =>
  expect.soft(await findViolations(page), where).toEqual([]);

/** Goes on by Tab to a button. */
const tabTo = async (page: Page, name: string | RegExp, within = page.locator("body")): Promise<void> => {
  const exact = typeof name === "string" ? { exact: true } : {};
  const wanted = within.getByRole("button", { name, ...exact }).first();
  for (let i = 0; i < 60; i += 1) {
    if (await wanted.evaluate((each) => each === document.activeElement)) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`Tab never reaches ${name}`);
};

/** Goes on by Tab to a button and presses it. */
const pressByTab = async (page: Page, name: string | RegExp, within?: Locator): Promise<void> => {
  await tabTo(page, name, within);
  await page.keyboard.press("Enter");
};

/** To the first point without a pointer, at a level. */
const startByKeys = async (day: PadDay, court: number, level: string): Promise<Page> => {
  const page = await day.newPhone(LAPTOP);
  await enterCourt(page, day.product.url, await day.codeOf(court), "Ioan P.");
  await pressByTab(page, OWN, page.getByRole("group", { name: "Who serves first?" }));
  await pressByTab(page, OWN, page.getByRole("group", { name: "Who is at the near or left end?" }));
  await pressByTab(page, "Start charting");
  await expect(button(page, "More")).toBeVisible();
  await type(page, "Escape", "h");
  const more = page.getByRole("dialog", { name: "More" });
  await expect(more).toBeVisible();
  await noViolations(page, `More at ${level}`);
  await pressByTab(page, level, more.getByRole("group", { name: "Level" }));
  await expect(more).toHaveCount(0);
  await expect(button(page, `Level: ${level}. Change`)).toBeVisible();
  return page;
};

const pointsIn = (log: readonly LoggedEntry[]) => {
  expect(new Set(log.map(({ entry }) => entry.id)).size).toBe(log.length);
  const folded = foldLog(log);
  if (!folded.ok) throw new Error(folded.error);
  expect(folded.value.setAside).toEqual([]);
  return folded.value.points.map(({ point }) => point);
};

test.describe("the pad by keys alone", () => {
  test("[PD63, PD64, PD66] score only: a game of points, undo, a level on, and the keys on demand", async ({
    day,
  }) => {
    const page = await startByKeys(day, 1, "Score only");
    await expect(button(page, /^Point Noor/)).toHaveAttribute("aria-keyshortcuts", "V");
    await noViolations(page, "score only");
    // As fast as keys come: none is lost.
    await type(page, "v", "b", "v");
    await expect(score(page)).toContainText("30");
    await type(page, "Backspace");
    await strip(page, "Taken back: point Noor.");
    await type(page, "1");
    await strip(page, "not possible now");
    await type(page, "v");
    await strip(page, /Noor serves/);
    await type(page, "v", "v");
    await expect(score(page)).toContainText(/Noor V\..*10/);
    await strip(page, "Game Noor V., 1–0");
    await type(page, "?");
    const keys = page.getByRole("dialog", { name: "Keys" });
    await expect(keys.getByRole("listitem").filter({ hasText: "Point Noor" })).toContainText("V");
    await noViolations(page, "the keys");
    // Under the map nothing is charted.
    await type(page, "v", "Escape");
    await expect(keys).toHaveCount(0);
    await allSent(page);
    const points = pointsIn(await day.logOf(1));
    expect(points.map(({ winner }) => winner).join("")).toBe("ABAAA");
  });

  test("[PD63, PD65] every ball: serves, balls by letters, endings, a mended chip, a replayed point", async ({
    day,
  }) => {
    const page = await startByKeys(day, 2, "Every ball");
    await expect(button(page, "First in")).toHaveAttribute("aria-keyshortcuts", "1");
    await noViolations(page, "before the serve");
    // Fault, let, second in; the far player's return cross-court, Noor's line, and a winner.
    await type(page, "2", "4", "1");
    await strip(page, "Draw the return");
    await type(page, "u");
    await strip(page, "Struck far left, at the baseline.");
    await strip(page, "Where did it go? Same key: kept");
    await type(page, "o");
    await strip(page, "Struck far right");
    await type(page, "Escape");
    await strip(page, "Draw the return");
    await type(page, "u", "c", "z", "u");
    await expect(chips(page)).toHaveCount(3);
    await strip(page, "Noor: down the line");
    await noViolations(page, "balls drawn");
    await type(page, "1");
    await strip(page, "Noor: winner.");
    // The first ball was a lob, and is drawn anew.
    await type(page, "ArrowLeft", "ArrowLeft", "7", "f", "i", "x");
    await type(page, "ArrowLeft", "ArrowLeft");
    await expect(page.getByRole("combobox", { name: "Kind of shot" })).toHaveValue("lob");
    await noViolations(page, "a ball open");
    await type(page, "Escape");
    await expect(button(page, /^Done 15–0/)).toBeEnabled();
    await type(page, "Enter");
    await expect(score(page)).toContainText("15");
    // Ace; a double fault; a miss into the net that was not forced; a point not seen; a replayed one.
    await type(page, "3", "Enter", "2", "2", "Enter");
    await expect(button(page, "Done when it is said who won")).toBeVisible();
    await type(page, "1", "u", "z", "3", "7");
    await expect(button(page, "Not forced")).toHaveAttribute("aria-pressed", "true");
    await type(page, "Enter", "1", "r");
    await strip(page, "Point replayed.");
    await type(page, "v");
    await allSent(page);
    const points = pointsIn(await day.logOf(2));
    expect(points.map(({ winner, serve }) => [winner, serve?.outcome])).toEqual([
      ["A", "secondIn"],
      ["A", "ace"],
      ["B", "doubleFault"],
      ["A", "firstIn"],
      ["A", undefined],
    ]);
    const [first, , , missed] = points;
    expect(first?.serve).toEqual({ outcome: "secondIn", faults: 1, lets: 1 });
    expect(first?.shots.map(({ striker, kind, result }) => [striker, kind, result])).toEqual([
      ["B", "lob", undefined],
      ["A", undefined, "winner"],
    ]);
    expect(missed?.shots.at(-1)).toMatchObject({
      striker: "B",
      result: "missed",
      miss: "net",
      missForced: false,
    });
  });

  test("[PD63, PD65] key balls: touches, a line ball and its questions, the counter, a last shot not drawn", async ({
    day,
  }) => {
    const page = await startByKeys(day, 3, "Key balls");
    await type(page, "1", "p", "p", "Shift+P", "s", "s", "z", "u");
    await expect(chips(page)).toHaveCount(3);
    await expect(button(page, /^Sat up, kept 1/)).toHaveAttribute("aria-keyshortcuts", "P");
    await type(page, "8");
    await noViolations(page, "key balls");
    await type(page, "ArrowDown");
    await strip(page, /^\w+: 1 /);
    await type(page, "Shift+1");
    await expect(page.getByRole("group", { name: /^Ball 2/ }).locator("[aria-pressed=true]")).toHaveCount(1);
    await type(page, "Shift+1", "Enter");
    await expect(score(page)).toContainText("15");
    for (let i = 0; i < 3; i += 1) await type(page, "3", "Enter");
    await allSent(page);
    const points = pointsIn(await day.logOf(3));
    expect(points.map(({ level, winner }) => `${level} ${winner}`)).toEqual([
      "key B",
      "key A",
      "key A",
      "key A",
    ]);
    const [first] = points;
    expect(first?.satUpKept).toBe(1);
    expect(first?.shots.map(({ to }) => to !== undefined)).toEqual([false, true]);
    expect(first?.shots[1]).toHaveProperty("ballHeight", "low");
  });

  test("[PD66, PD67] keys stay with fields and with what Tab has reached, and can be switched off", async ({
    day,
  }) => {
    const page = await startByKeys(day, 4, "Every ball");
    await tabTo(page, "More");
    await type(page, "3");
    await expect(button(page, "Ace")).toHaveAttribute("aria-pressed", "false");
    await type(page, "Escape", "3");
    await expect(button(page, "Ace")).toHaveAttribute("aria-pressed", "true");
    await expect(page.getByRole("application", { name: /^Court\./ })).toBeFocused();
    await type(page, "Control+b", "Backspace");
    await expect(button(page, "Ace")).toHaveAttribute("aria-pressed", "false");
    await expect(score(page)).not.toContainText("15");
    // A mouse's click leaves the keys alive.
    await button(page, "Fault").click();
    await type(page, "1");
    await expect(button(page, "Second in")).toHaveAttribute("aria-pressed", "true");
    await type(page, "h");
    await pressByTab(page, "Keys off");
    await page.keyboard.press("Escape");
    await expect(page.getByRole("dialog")).toHaveCount(0);
    await type(page, "3", "v");
    await expect(button(page, "Second in")).toHaveAttribute("aria-pressed", "true");
    await expect(button(page, "Second in")).not.toHaveAttribute("aria-keyshortcuts");
  });
});
