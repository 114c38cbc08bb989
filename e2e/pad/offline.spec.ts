import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, chromium, expect, type LaunchOptions, type Page } from "@playwright/test";
import { chartPoint, drawStroke, enterCourt } from "../fixtures/chart-court.ts";
import { findSmallTargets } from "../fixtures/find-small-targets.ts";
import { findViolations } from "../fixtures/find-violations.ts";
import { picturePath } from "../fixtures/look-at.ts";
import { test } from "./offline-day.ts";
import { allSent, answerStart, OWN, PHONE, startCharting } from "./pad-day.ts";
import { agrees, entriesOnPhone, foldOf, untilKept } from "./phone-outbox.ts";

const NOON_MS = Date.parse("2026-05-30T12:00:00Z");
/** From one point to the next, by the phone's clock: forty points are an hour. */
const POINT_MS = 90_000;

/** Charts service points one after the other, each a minute and a half after the last by the phone's clock. */
const chartOn = async (page: Page, from: number, count: number): Promise<void> => {
  for (let i = from; i < from + count; i += 1) {
    await page.clock.setFixedTime(NOON_MS + i * POINT_MS);
    await chartPoint(page, i % 5 === 4 ? "double" : "ace");
  }
};

const scoreOn = async (page: Page): Promise<string> =>
  (await page.getByTestId("score").textContent({ timeout: 15_000 })) ?? "";

test.describe("without a network", () => {
  test("[PD40, PD41, PD20, SY14, SY16, SY20, PD46] an hour of charting, a reload and a closed browser lose nothing", async ({
    day,
    launchOptions,
  }) => {
    test.setTimeout(400_000);
    const folder = mkdtempSync(join(tmpdir(), "courtloom-phone-"));
    const options: LaunchOptions = launchOptions;
    const openPhone = (offline: boolean): Promise<BrowserContext> =>
      chromium.launchPersistentContext(folder, { ...options, viewport: PHONE, hasTouch: true, offline });
    let phone = await openPhone(false);
    let page = await phone.newPage();
    await enterCourt(page, day.product.url, await day.codeOf(1), "Ioan P.");
    await answerStart(page, OWN);
    await page.clock.setFixedTime(NOON_MS);
    await chartOn(page, 0, 2);
    await allSent(page);
    await untilKept(page);

    await phone.setOffline(true);
    await chartOn(page, 2, 18);
    await expect(page.getByTestId("pad")).toHaveAttribute("data-signal", "noSignal", { timeout: 60_000 });
    await expect(page.getByTestId("notice-noSignal")).toContainText("Everything is on this phone.");
    await expect(page.getByTestId("unsent")).toHaveText("18 unsent");
    await drawStroke(page, { from: { x: 3, y: -12.4 }, to: { x: -2.8, y: 9.2 } }, "A");
    await expect(page.getByTestId("chip-0")).toBeVisible();
    const score = await scoreOn(page);

    await page.reload();
    await expect(page.getByTestId("chip-0")).toBeVisible({ timeout: 30_000 });
    expect(await scoreOn(page)).toBe(score);
    await expect(page.getByTestId("unsent")).toHaveText("18 unsent");
    await page.screenshot({ path: picturePath("pad-offline") });
    expect(await findViolations(page)).toEqual([]);
    expect(await findSmallTargets(page)).toEqual([]);
    await page.getByTestId("undo").click();
    await expect(page.getByTestId("chip-0")).toHaveCount(0);

    // The browser is gone, as when a phone runs out of power; opened again it still has no network.
    await phone.close();
    phone = await openPhone(true);
    page = await phone.newPage();
    await page.clock.setFixedTime(NOON_MS + 20 * POINT_MS);
    await page.goto(`${day.product.url}/pad`);
    await expect(page.getByTestId("unsent")).toHaveText("18 unsent", { timeout: 30_000 });
    expect(await scoreOn(page)).toBe(score);
    await chartOn(page, 20, 20);
    await expect(page.getByTestId("unsent")).toHaveText("38 unsent");

    await phone.setOffline(false);
    await allSent(page);
    await expect(page.getByTestId("notice-clock")).toContainText("Order is kept; times shown may be off.");
    const charted = await entriesOnPhone(page);
    const log = await day.logOf(1);
    agrees(log, charted, 40);
    const at = log.filter(({ epoch }) => epoch !== 0).map(({ entry }) => entry.atMs);
    expect(at).toEqual([...at].sort((a, b) => a - b));
    const walls = charted.map(({ wallMs }) => wallMs);
    expect(Math.max(...walls) - (NOON_MS + POINT_MS)).toBeGreaterThan(55 * 60_000);
    await phone.close();
    rmSync(folder, { recursive: true, force: true });
  });

  test("[PD43, LV29] a phone that lost its storage says so, and goes on from what was sent", async ({
    day,
  }) => {
    const page = await startCharting(day, 2, "Rosa T.");
    for (let i = 0; i < 3; i += 1) await chartPoint(page, "ace");
    await allSent(page);
    await page.context().setOffline(true);
    await chartPoint(page, "ace");
    await expect(page.getByTestId("unsent")).toHaveText("1 unsent");
    const context = page.context();
    await page.close();

    await context.setOffline(false);
    const other = await context.newPage();
    await other.goto(`${day.product.url}/robots.txt`);
    await other.evaluate(
      () =>
        new Promise<void>((resolve, reject) => {
          localStorage.clear();
          const gone = indexedDB.deleteDatabase("courtloom-outbox");
          gone.onsuccess = () => resolve();
          gone.onerror = () => reject(gone.error);
        }),
    );
    await other.goto(`${day.product.url}/pad`);
    const told = other.getByTestId("copy-gone");
    await expect(told).toContainText(
      "This phone’s own copy is gone. What had been sent is here again: 3 points; what was unsent then is lost on this phone.",
      { timeout: 30_000 },
    );
    await other.screenshot({ path: picturePath("pad-copy-gone") });
    expect(await findViolations(other)).toEqual([]);
    // How long the opening took can be measured from outside.
    const opened = await other.evaluate(() => performance.getEntriesByName("pad-open").length);
    expect(opened).toBe(1);
    await other.getByTestId("go-on").click();
    await other
      .getByRole("group", { name: "Who is at the near or left end?" })
      .getByRole("button", { name: OWN })
      .click();
    await other.getByTestId("start").click();
    await expect(other.getByTestId("score-A").getByTestId("points")).toHaveText("40");
    await other.getByTestId("notice-copyGone").getByRole("button", { name: "OK" }).click();
    await expect(other.getByTestId("notice-copyGone")).toHaveCount(0);
    await chartPoint(other, "double");
    await allSent(other);
    const log = await day.logOf(2);
    const points = log.filter(({ entry }) => entry.body.kind === "PointCharted");
    expect(points.map(({ epoch }) => epoch)).toEqual([1, 1, 1, 2]);
    expect(foldOf(log).points).toHaveLength(4);
  });

  test("[SY9, AU13, PD47] a code that ends while there is no network deletes nothing; a new one sends all of it once", async ({
    day,
  }) => {
    const page = await startCharting(day, 3, "Dana H.");
    await chartPoint(page, "ace");
    await allSent(page);
    await untilKept(page);
    await page.context().setOffline(true);
    await chartPoint(page, "ace");
    const desk = day.desk.getByRole("region", { name: "Court 3" });
    const old = await day.codeOf(3);
    await desk.getByRole("button", { name: /Take the code back/ }).click();
    await day.desk.getByRole("button", { name: "Make the codes that are missing" }).click();
    await expect.poll(() => day.codeOf(3)).not.toBe(old);
    await chartPoint(page, "double");
    await page.context().setOffline(false);
    await expect(page.getByTestId("notice-refused")).toContainText(
      "The code has ended. All is on this phone.",
      {
        timeout: 60_000,
      },
    );
    await expect(page.getByTestId("unsent")).toHaveText("2 unsent");

    // Loaded anew with a network the phone is not let in, and can still be gone on with.
    await page.reload();
    await expect(page.getByTestId("enter-problem")).toContainText("This code has ended.");
    await expect(page.getByTestId("enter-unsent")).toContainText("2 unsent on this phone.");
    await page.screenshot({ path: picturePath("pad-code-ended") });
    await page.getByTestId("go-on-without").click();
    await chartPoint(page, "ace");
    await expect(page.getByTestId("unsent")).toHaveText("3 unsent");
    await page.getByTestId("notice-refused").getByRole("button", { name: "Enter code" }).click();
    await page.getByLabel("Court code").fill(await day.codeOf(3));
    await page.getByRole("button", { name: "Open the court" }).click();
    await allSent(page);
    agrees(await day.logOf(3), await entriesOnPhone(page), 4);
  });
});
