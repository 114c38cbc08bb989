import { foldLog, type LoggedEntry } from "@courtloom/match-log";
import { type BrowserContext, expect, type Page, test } from "@playwright/test";
import { chartPoint, enterCourt } from "../fixtures/chart-court.ts";
import { type RunningProduct, startProduct } from "../fixtures/product.ts";
import { addMatch, makeCodes, makeDay, setUpAcademy } from "../fixtures/set-up-day.ts";

const PICTURES = new URL("../../.tmp/e2e/pictures/", import.meta.url).pathname;
const PHONE = { width: 390, height: 844 };
const OWN = "Noor V.";
const FIRST = "Ioan P.";
const SECOND = "Rosa T.";

/** The day has one match; its id stands in the desk's links. */
const onlyMatch = async (desk: Page): Promise<string> => {
  await desk.reload();
  const href = (await desk.locator('a[href^="/court/"]').first().getAttribute("href")) ?? "";
  return href.split("/").at(-1) ?? "";
};

const readLog = async (page: Page, url: string, matchId: string): Promise<LoggedEntry[]> => {
  const input = encodeURIComponent(JSON.stringify({ matchId, after: 0, limit: 500 }));
  const answer = await page.request.get(`${url}/api/trpc/match.log?input=${input}`);
  expect(answer.status()).toBe(200);
  return ((await answer.json()) as { result: { data: { entries: LoggedEntry[] } } }).result.data.entries;
};

const start = async (page: Page, asksServer: boolean): Promise<void> => {
  const ends = "Who is at the near or left end?";
  for (const question of asksServer ? ["Who serves first?", ends] : [ends]) {
    await page.getByRole("group", { name: question }).getByRole("button", { name: OWN }).click();
  }
  await page.getByTestId("start").click();
};

test.describe("a phone that falls silent", () => {
  let product: RunningProduct;
  const contexts: BrowserContext[] = [];

  test.beforeAll(async () => {
    test.setTimeout(600_000);
    product = await startProduct("take-over");
  });

  test.afterAll(async () => {
    for (const context of contexts) await context.close();
    await product?.stop();
  });

  test("[LV29, SY18, PD22] another person takes over; what the first one still had stands beside the score", async ({
    browser,
  }) => {
    test.setTimeout(300_000);
    const open = async (viewport: { width: number; height: number }): Promise<Page> => {
      const context = await browser.newContext({ viewport });
      contexts.push(context);
      return context.newPage();
    };
    const director = await open({ width: 1280, height: 800 });
    await setUpAcademy(director, product.url);
    await makeDay(director, "Saturday match play", 1);
    await addMatch(director, {
      ...{ court: 1, own: OWN, opponent: "Visitor red" },
      format: "2 short sets to 4, match tie-break to 10",
    });
    const code = await (await makeCodes(director))(1);

    const one = await open(PHONE);
    await enterCourt(one, product.url, code, FIRST);
    await start(one, true);
    for (const line of ["ace", "first D>Lnet"]) await chartPoint(one, line);
    await expect(one.getByTestId("unsent")).toHaveText(/All sent/);

    // Two more while the link is gone: safe on the phone, unknown to the server.
    await one.context().setOffline(true);
    await expect(one.getByTestId("pad")).toHaveAttribute("data-signal", "noSignal", { timeout: 60_000 });
    for (const line of ["double", "double"]) await chartPoint(one, line);
    await expect(one.getByTestId("unsent")).toHaveText(/2/);

    const two = await open(PHONE);
    await enterCourt(two, product.url, code, SECOND);
    const taken = two.getByTestId("lead-taken");
    await expect(taken).toContainText(`${FIRST} charts this court`);
    await expect(taken).toContainText(/Last heard \d+ s ago/);
    await two.getByTestId("take-over").click({ timeout: 60_000 });
    await start(two, false);
    for (const line of ["ace", "ace", "double"]) await chartPoint(two, line);
    await expect(two.getByTestId("unsent")).toHaveText(/All sent/);

    await one.context().setOffline(false);
    await expect(one.getByTestId("lead-taken")).toContainText(`${SECOND} leads this match now`, {
      timeout: 60_000,
    });
    await expect(one.getByTestId("lead-taken")).toContainText(
      "2 points that you charted after that are kept beside the score.",
    );
    await expect(one.getByTestId("unsent")).toHaveText(/All sent/);

    for (const phone of [one, two]) {
      await expect(phone.getByTestId("score-A").getByTestId("games")).toHaveText("1");
      await expect(phone.getByTestId("score-A").getByTestId("points")).toHaveText("15");
      await expect(phone.getByTestId("score-B").getByTestId("points")).toHaveText("0");
    }
    await one.screenshot({ path: `${PICTURES}pad-lead-lost.png` });
    await agrees(director);
  });

  /** The leads' five points make the score; the two late ones are in the log, in their own lane, once. */
  const agrees = async (director: Page): Promise<void> => {
    const matchId = await onlyMatch(director);
    const log = await readLog(director, product.url, matchId);
    expect(log.map(({ pos }) => pos)).toEqual(log.map((_, i) => i + 1));
    expect(new Set(log.map(({ entry }) => entry.id)).size).toBe(log.length);
    const points = log.filter(({ entry }) => entry.body.kind === "PointCharted");
    expect(points.map(({ epoch }) => epoch)).toEqual([1, 1, 2, 2, 2, 1, 1]);
    const view = foldLog(log);
    expect(view.ok && view.value.setAside.map(({ pos }) => pos)).toEqual(
      points.slice(-2).map(({ pos }) => pos),
    );

    await director.goto(`${product.url}/court/${matchId}`);
    const lines = director.getByTestId("log").getByRole("listitem");
    await expect(lines).toHaveCount(log.length);
    await expect(lines.filter({ hasText: "another phone led the match by then" })).toHaveCount(2);
    for (const { pos, epoch } of points) {
      await expect(director.getByTestId(`entry-${pos}`)).toContainText(epoch === 1 ? FIRST : SECOND);
    }
    await expect(lines.filter({ hasText: "Took over" })).toContainText(SECOND);
    await director.screenshot({ path: `${PICTURES}court-taken-over.png`, fullPage: true });
  };
});
