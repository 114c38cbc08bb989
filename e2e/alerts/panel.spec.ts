import { type BrowserContext, expect, type Page } from "@playwright/test";
import { type BoardFeed, feedBoard } from "../board/board-feed.ts";
import { boardTile } from "../board/board-tiles.ts";
import { test } from "../fixtures/demo-product.ts";
import { findViolations } from "../fixtures/find-violations.ts";
import { EVERYWHERE_AND_WALL, lookAt, SIZES } from "../fixtures/look-at.ts";
import { alertInEachState, alertOn, courtInEachState } from "./alert-lines.ts";

const SENTENCE = "10 of 14 line balls missed, usually 3 in 10; 8 were off plan; since 2–1 in the second.";

test.describe("the alerts of a day", () => {
  let context: BrowserContext;
  let page: Page;
  let feed: BoardFeed;

  const open = async (url: string, alerts = alertInEachState(), size: keyof typeof SIZES = "wall") => {
    await page.setViewportSize(SIZES[size]);
    feed = await feedBoard(page, courtInEachState(Date.now()), alerts);
    await page.goto(url);
    await expect(page.getByTestId("tile-8")).toBeVisible();
  };
  const alertOf = (name: RegExp) => page.getByTestId("panel").getByRole("article", { name });

  test.beforeEach(async ({ browser, demo }) => {
    context = await demo.asDirector(browser);
    page = await context.newPage();
  });
  test.afterEach(async () => context.close());

  test("[AS15, AS18, AS21] every state has its shape and word on tiles and in the panel, at every size", async ({
    demo,
  }) => {
    await open(`${demo.url}/board/${demo.dayId}`);
    await expect(page.getByTestId("panel").getByTestId("alert-sentence").first()).toHaveText(SENTENCE);
    await expect(page.getByTestId("panel").getByTestId("alert")).toHaveCount(3);
    await expect(page.getByTestId("blind-5")).toContainText(/Blind, phone silent \d+ s/);
    const words = {
      1: "Alert",
      2: "Easing",
      3: "Noticed",
      4: "Withdrawn",
      5: "Blind",
      6: "Suspended",
      7: "Waiting",
    };
    for (const [court, word] of Object.entries(words))
      await expect(page.getByTestId(`tile-${court}`).getByTestId("flag")).toContainText(word);
    const shapes = await page
      .locator("article [data-testid=flag] svg")
      .evaluateAll((marks) => marks.map((mark) => mark.getAttribute("data-mark")));
    expect(new Set(shapes).size).toBe(7);
    await expect(page.getByTestId("tile-5").getByTestId("figure")).toHaveCount(0);
    await lookAt(page, "alerts", EVERYWHERE_AND_WALL);
  });

  test("[AS17, AS3, AS4] seen, assigned, snoozed with a reason, useful: shown as unsent until the server has them", async ({
    demo,
  }) => {
    await open(`${demo.url}/board/${demo.dayId}`, [alertOn(0)]);
    const alert = alertOf(/^Alert: Court 1/);
    await alert.getByRole("button", { name: "Seen" }).click();
    await alert.getByRole("button", { name: "Assign" }).click();
    await alert.getByLabel("Who looks after it").selectOption({ label: "Dana H." });
    await alert.getByRole("button", { name: "Snooze" }).click();
    await alert.getByRole("button", { name: "Snooze", exact: true }).last().click();
    await expect(alert.getByLabel("Why")).toHaveAttribute("aria-invalid", "true");
    await alert.getByLabel("Why").fill("Talked at the change of ends");
    await alert.getByRole("radio", { name: "until the match ends" }).check();
    expect(await findViolations(page)).toEqual([]);
    await alert.getByRole("button", { name: "Snooze", exact: true }).last().click();
    await alert.getByRole("button", { name: "Useful", exact: true }).click();
    await expect
      .poll(() => feed.marks.map(({ mark }) => mark))
      .toEqual([
        { kind: "seen" },
        { kind: "assign", memberId: "member-dana" },
        { kind: "snooze", reason: "Talked at the change of ends", until: "match" },
        { kind: "useful", useful: true },
      ]);
    const by = { memberId: "member-maren", name: "Maren H.", atMs: Date.parse("2026-06-20T11:34:00+01:00") };
    feed.list(
      alertOn(0, {
        marks: {
          seen: [by],
          assigned: { memberId: "member-dana", name: "Dana H.", by },
          snoozed: { ...by, reason: "Talked at the change of ends", until: "match" },
          useful: [{ ...by, useful: true }],
        },
      }),
    );
    await expect(alert.getByTestId("snoozed")).toHaveText(
      "Snoozed by Maren H. 11:34 until the match ends: Talked at the change of ends",
    );
    await expect(page.getByTestId("tile-1")).toHaveAttribute("data-alert", "snoozed");
    await lookAt(page, "alerts-snoozed", [{ size: "wall", scheme: "light", thorough: true }]);

    feed.answer({ mark: { ok: false, code: "forbidden", retry: false } });
    await alert.getByRole("button", { name: "End snooze" }).click();
    await expect(alert.getByTestId("refused-mark")).toContainText("Snooze ended: not taken.");
    await alert.getByRole("button", { name: "Put away" }).click();
    await expect(alert.getByTestId("refused-mark")).toHaveCount(0);
  });

  test("[AS3, AS19] without a connection the list is the past with its time, and what is done is sent later", async ({
    demo,
  }) => {
    await open(`${demo.url}/board/${demo.dayId}`, [alertOn(0)]);
    const alert = alertOf(/^Alert: Court 1/);
    await expect(alert).toBeVisible();
    await feed.away(true);
    await expect(page.getByTestId("alerts-stale")).toContainText(/As known at \d\d:\d\d:\d\d\./);
    await alert.getByRole("button", { name: "Seen" }).click();
    await expect(alert.getByTestId("unsent-mark")).toHaveText("Seen: not sent yet");
    await lookAt(page, "alerts-offline", [
      { size: "wall", scheme: "dark", thorough: true },
      { size: "wall", scheme: "light" },
    ]);
    await page.reload();
    await expect(page.getByTestId("board-loading")).toBeVisible();
    await feed.away(false);
    await expect.poll(() => feed.marks.map(({ mark }) => mark.kind)).toEqual(["seen"]);
    await expect(alertOf(/^Alert: Court 1/).getByTestId("unsent-mark")).toHaveCount(0);
  });

  test("[AS16, AS19] none, refused and many are each said", async ({ demo }) => {
    await open(`${demo.url}/board/${demo.dayId}`, []);
    await expect(page.getByTestId("no-alerts")).toHaveText("No alerts. 5 courts are being watched.");
    feed.answer({ alerts: { ok: false, code: "forbidden", retry: false } });
    await page.reload();
    await expect(page.getByTestId("alerts-refused")).toHaveText(
      "Alerts are not shown. You may not see this. Ask the director of the day.",
    );
  });

  test("[AS19] on a phone the gravest alert is a line that leads to all of them", async ({ demo }) => {
    await open(`${demo.url}/board/${demo.dayId}`, alertInEachState(), "phone");
    const strip = page.getByTestId("alert-strip");
    await expect(strip).toContainText(/Court 1, Noor V\..*10 of 14 line balls missed.*2 open/);
    await strip.click();
    const sheet = page.getByRole("dialog");
    await expect(sheet.getByTestId("alert")).toHaveCount(3);
    await lookAt(page, "alerts-sheet", [
      { size: "phone", scheme: "light", thorough: true },
      { size: "phone", scheme: "dark" },
      { size: "smallPhone", scheme: "dark" },
    ]);
    await page.setViewportSize(SIZES.phone);
    await page.keyboard.press("Escape");
    await expect(strip).toBeVisible();
  });

  test("[AS22, AS23] a notice is presented once on this device, through a reload and a reconnect", async ({
    demo,
  }) => {
    await open(`${demo.url}/board/${demo.dayId}`, [alertOn(0)], "phone");
    feed.notify(alertOn(0).key);
    const notice = page.getByTestId("notice");
    await expect(notice).toContainText(SENTENCE);
    await lookAt(page, "alerts-notice", [
      { size: "phone", scheme: "light", thorough: true },
      { size: "desktop", scheme: "dark" },
    ]);
    await page.setViewportSize(SIZES.phone);
    await page.reload();
    await expect(page.getByTestId("alert-strip")).toBeVisible();
    feed.notify(alertOn(0).key);
    feed.list(alertOn(0), alertOn(7, { strength: 0.5 }));
    feed.notify(alertOn(0).key, alertOn(7).key);
    await expect(notice).toHaveCount(1);
    await expect(notice).toContainText("Court 8");
    await notice.getByRole("button", { name: "Put away" }).click();
    await expect(notice).toHaveCount(0);

    await page.getByTestId("open-panel").click();
    const sound = page.getByRole("checkbox", { name: "Sound" });
    await expect(sound).not.toBeChecked();
    await sound.check();
    await page.reload();
    await page.getByTestId("open-panel").click();
    await expect(sound).toBeChecked();
  });

  test("[AS20] a change of one alert draws its line and no other", async ({ demo }) => {
    const many = [0, 1, 2, 3, 7].map((i) => alertOn(i, { strength: 1 - i / 10 }));
    await open(`${demo.url}/board/${demo.dayId}`, many);
    await expect(page.getByTestId("panel").getByTestId("alert")).toHaveCount(5);
    await page.evaluate(() => {
      const changed = new Set<string>();
      const note = (records: readonly MutationRecord[]) => {
        for (const { target } of records) {
          const element = target instanceof Element ? target : target.parentElement;
          const article = element?.closest("article");
          if (element?.closest('[data-testid="freshness"], [data-testid^="blind-"]')) continue;
          changed.add(article?.getAttribute("aria-label") ?? article?.dataset.testid ?? "outside");
        }
      };
      for (const part of ["courts", "panel"]) {
        const root = document.querySelector(`[data-testid="${part}"]`);
        const what = { subtree: true, childList: true, attributes: true, characterData: true };
        if (root) new MutationObserver(note).observe(root, what);
      }
      Object.assign(window, { changedLines: () => [...changed] });
    });
    const changed = { ...many[1], match: { x: 11, n: 15, offPlan: 8, low: 0.48, high: 0.89 } };
    feed.list(...many.map((line, i) => (i === 1 ? ({ ...line, ...changed } as typeof line) : line)));
    await expect(alertOf(/Court 2/).getByTestId("alert-sentence")).toContainText("11 of 15");
    expect(await page.evaluate("changedLines()")).toEqual([
      await alertOf(/Court 2/).getAttribute("aria-label"),
    ]);
  });

  for (const courts of [32, 64])
    test(`[AS21] the edge of an easing tile crosses no line where ${courts} courts share a wall`, async ({
      demo,
    }) => {
      await page.setViewportSize(SIZES.wall);
      const now = Date.now();
      await feedBoard(
        page,
        Array.from({ length: courts }, (_, i) => boardTile(i, now)),
      );
      await page.goto(`${demo.url}/board/${demo.dayId}`);
      const tile = page.locator('article[data-alert="easing"]').first();
      await expect(tile).toBeVisible();
      const gap = await tile.evaluate((article) => {
        const walker = document.createTreeWalker(article, NodeFilter.SHOW_TEXT);
        const range = document.createRange();
        let least = Number.POSITIVE_INFINITY;
        while (walker.nextNode()) {
          range.selectNodeContents(walker.currentNode);
          for (const { left, width } of range.getClientRects())
            if (width > 1) least = Math.min(least, left - article.getBoundingClientRect().left);
        }
        return { least, bottom: getComputedStyle(article).boxShadow };
      });
      // The felt edge is 8 px and its ink 2 px wide, inside a border of 2 px.
      expect(gap.least).toBeGreaterThanOrEqual(12);
      await tile.screenshot({ path: `.tmp/e2e/pictures/alerts-easing-${courts}.png` });
    });
});
