import type { Side } from "@courtloom/core";
import { foldLog, type LoggedEntry, type MatchView } from "@courtloom/match-log";
import { type Browser, type BrowserContext, expect, type Page, test } from "@playwright/test";
import { chartPoint, enterCourt, serverOn } from "../fixtures/chart-court.ts";
import { findViolations } from "../fixtures/find-violations.ts";
import { makeOneCourtDay, type OneCourtDay } from "../fixtures/one-court-day.ts";
import { type RunningProduct, startProduct } from "../fixtures/product.ts";
import { setUpAcademy } from "../fixtures/set-up-day.ts";

const PICTURES = new URL("../../.tmp/e2e/pictures/", import.meta.url).pathname;
const OWN = "Noor V.";
const LEAD = "Ioan P.";
const SECOND = "Rosa T.";

/** The day has one match; its id stands in the desk's links. */
const onlyMatch = async (desk: Page, url: string, { dayId }: OneCourtDay): Promise<string> => {
  await desk.goto(`${url}/desk/${dayId}`);
  const href = (await desk.locator('a[href^="/court/"]').first().getAttribute("href")) ?? "";
  return href.split("/").at(-1) ?? "";
};

const readLog = async (page: Page, url: string, matchId: string): Promise<LoggedEntry[]> => {
  const input = encodeURIComponent(JSON.stringify({ matchId, after: 0, limit: 500 }));
  const answer = await page.request.get(`${url}/api/trpc/match.log?input=${input}`);
  expect(answer.status()).toBe(200);
  return ((await answer.json()) as { result: { data: { entries: LoggedEntry[] } } }).result.data.entries;
};

/** The stored log, dense and without an entry twice, and what it folds to. */
const stored = async (
  page: Page,
  url: string,
  matchId: string,
): Promise<{ log: LoggedEntry[]; view: MatchView }> => {
  const log = await readLog(page, url, matchId);
  expect(log.map(({ pos }) => pos)).toEqual(log.map((_, i) => i + 1));
  expect(new Set(log.map(({ entry }) => entry.id)).size).toBe(log.length);
  const view = foldLog(log);
  if (!view.ok) throw new Error(view.error);
  return { log, view: view.value };
};

const winners = ({ points }: MatchView): string => points.map(({ point }) => point.winner).join("");

const start = async (page: Page, asksServer: boolean): Promise<void> => {
  const ends = "Who is at the near or left end?";
  for (const question of asksServer ? ["Who serves first?", ends] : [ends])
    await page.getByRole("group", { name: question }).getByRole("button", { name: OWN }).click();
  await page.getByTestId("start").click();
  await expect(page.getByTestId("court")).toBeVisible();
};

/** Points by serve alone: an ace for the server, a double fault for the receiver. */
const chart = async (page: Page, letters: string): Promise<void> => {
  for (const winner of letters as Iterable<Side>)
    await chartPoint(page, (await serverOn(page)) === winner ? "ace" : "double");
};

const pointsOn = (page: Page, side: Side) => page.getByTestId(`score-${side}`).getByTestId("points");

test.describe("two people on one court", () => {
  let product: RunningProduct;
  let director: Page;
  const contexts: BrowserContext[] = [];
  const open = async (browser: Browser, viewport = { width: 390, height: 844 }): Promise<Page> => {
    const context = await browser.newContext({ viewport });
    contexts.push(context);
    return context.newPage();
  };

  test.beforeAll(async ({ browser }) => {
    test.setTimeout(600_000);
    product = await startProduct("second-lane");
    director = await open(browser, { width: 1280, height: 800 });
    await setUpAcademy(director, product.url);
  });

  test.afterAll(async () => {
    for (const context of contexts) await context.close();
    await product?.stop();
  });

  test("[PD100, PD101, PD102, PD106, LV37, BD16] two chart the same points; the lead merges what the second has right", async ({
    browser,
  }) => {
    test.setTimeout(400_000);
    const day = await makeOneCourtDay(director, product.url, {
      name: "Saturday match play",
      own: OWN,
      opponent: "Visitor red",
    });
    // What was played: 20 points. The lead leaves out the third and has the last one wrong, the second leaves out
    // one in the third game.
    const truth = "AABAABBBBAABAABBBBAB";

    const lead = await open(browser);
    await enterCourt(lead, product.url, day.code, LEAD);
    await start(lead, true);
    await chart(lead, "A");

    const second = await open(browser);
    await enterCourt(second, product.url, day.code, SECOND);
    await expect(second.getByTestId("lead-taken")).toContainText(`${LEAD} charts this court`);
    await second.getByTestId("chart-second").click();
    await start(second, false);
    await expect(pointsOn(second, "A")).toHaveText("15");
    await expect(second.getByTestId("second")).toContainText(`Second, beside ${LEAD}`);

    await chart(second, "AB");
    await expect(second.getByTestId("lead-score")).toHaveText("Lead: 0–0 15–0");
    await second.screenshot({ path: `${PICTURES}pad-second.png` });
    expect(await findViolations(second)).toEqual([]);
    await chart(second, "AA");
    await chart(lead, "AAA");
    await expect(second.getByTestId("lead-score")).toHaveText("");

    await chart(lead, "BBBB");
    await chart(second, "BBBB");
    await chart(lead, "AABAA");
    await chart(second, "AAAA");
    for (const phone of [lead, second]) await chart(phone, "BBBBA");
    await chart(lead, "A");
    await chart(second, "B");
    for (const phone of [lead, second]) await expect(phone.getByTestId("unsent")).toHaveText(/All sent/);

    const bar = lead.getByTestId("beside-score");
    await expect(bar).toContainText(`Beside the score: 2 points of ${SECOND} differ.`);
    await bar.getByRole("button", { name: "Compare" }).click();
    await expect(lead.getByTestId("lane-counts")).toHaveText(
      "18 points: 16 same, 1 differs, 1 only there, 1 only in the score",
    );
    await lead.screenshot({ path: `${PICTURES}pad-merge.png` });
    expect(await findViolations(lead)).toEqual([]);
    const missing = lead.getByTestId("row-laneOnly");
    await missing.getByRole("button", { name: "Put in" }).click();
    await expect(lead.getByTestId("merge-change")).toHaveText("The score stays 2–2 30–0.");
    await lead.getByTestId("confirm-merge").click();
    await expect(missing).toHaveCount(0);
    await lead.getByTestId("row-differs").getByRole("button", { name: "Use Rosa’s" }).click();
    await expect(lead.getByTestId("merge-change")).toHaveText("The score 2–2 30–0 becomes 2–2 15–15.");
    await lead.getByTestId("confirm-merge").click();
    await expect(lead.getByTestId("row-differs")).toHaveCount(0);
    await expect(lead.getByTestId("merge-score")).toHaveText("2–2 15–15");
    await lead.getByRole("button", { name: "Back to the court" }).click();
    await expect(bar).toHaveCount(0);
    await expect(pointsOn(lead, "B")).toHaveText("15");
    await expect(lead.getByTestId("unsent")).toHaveText(/All sent/);

    const matchId = await onlyMatch(director, product.url, day);
    const { log, view } = await stored(director, product.url, matchId);
    expect(winners(view)).toBe(truth);
    expect(view.setAside).toEqual([]);
    const lanes = [...new Set(view.points.map(({ laneId }) => laneId))];
    expect(view.points.filter(({ laneId }) => laneId === lanes[1])).toHaveLength(2);
    const charted = log.filter(({ entry }) => entry.body.kind === "PointCharted");
    expect(charted.filter(({ epoch }) => epoch === 1)).toHaveLength(19);
    expect(charted.filter(({ epoch }) => epoch === -1)).toHaveLength(18);

    await director.goto(`${product.url}/court/${matchId}`);
    await expect(director.getByTestId("seconds")).toContainText(`also ${SECOND} (second)`);
    const beside = director.getByTestId("beside-score");
    await expect(beside).toContainText(`${SECOND}, second`);
    await expect(beside.getByTestId("lane-counts")).toHaveText("18 points: 18 same, 1 only in the score");
    await expect(director.getByTestId("log")).toContainText("Second: beside the score.");
    await director.screenshot({ path: `${PICTURES}court-beside-score.png`, fullPage: true });

    // A merge is taken out again as it was put in.
    await lead.getByTestId("level").click();
    await lead.getByTestId("compare-lanes").click();
    await lead
      .getByTestId("row-same")
      .last()
      .getByRole("button", { name: /Take Rosa’s out again/ })
      .click();
    await lead.getByTestId("confirm-merge").click();
    await expect(lead.getByTestId("merge-score")).toHaveText("2–2 30–0");
  });

  test("[PD104, PD105, L25] comes back late: points charted meanwhile are compared and put in by whoever leads", async ({
    browser,
  }) => {
    test.setTimeout(400_000);
    const day = await makeOneCourtDay(director, product.url, {
      name: "Sunday match play",
      own: OWN,
      opponent: "Visitor blue",
    });
    const first = await open(browser);
    await enterCourt(first, product.url, day.code, LEAD);
    await start(first, true);
    await chart(first, "AAB");
    await expect(first.getByTestId("unsent")).toHaveText(/All sent/);
    await first.context().setOffline(true);
    await expect(first.getByTestId("pad")).toHaveAttribute("data-signal", "noSignal", { timeout: 60_000 });
    await chart(first, "BBA");

    // The second one takes over after two of these points and has missed them.
    const next = await open(browser);
    await enterCourt(next, product.url, day.code, SECOND);
    await next.getByTestId("take-over").click({ timeout: 60_000 });
    await start(next, false);
    await chart(next, "A");
    await expect(next.getByTestId("unsent")).toHaveText(/All sent/);

    await first.context().setOffline(false);
    const lost = first.getByTestId("lead-taken");
    await expect(lost).toContainText(`${SECOND} leads this match now`, { timeout: 60_000 });
    await expect(lost).toContainText(`${SECOND} took over at 0–0 30–15.`);
    await expect(lost).toContainText("3 points that you charted after that are kept beside the score.");
    await expect(first.getByTestId("unsent")).toHaveText(/All sent/);
    await first.screenshot({ path: `${PICTURES}pad-came-back.png` });
    expect(await findViolations(first)).toEqual([]);

    await expect(next.getByTestId("beside-score")).toContainText(`2 points of ${LEAD} differ.`);
    await next.getByTestId("beside-score").getByRole("button", { name: "Compare" }).click();
    await expect(next.getByTestId("lane-beside")).toContainText(`${LEAD}, after the take-over`);
    await expect(next.getByTestId("lane-counts")).toHaveText("3 points: 1 same, 2 only there");
    for (const left of [1, 0]) {
      await next.getByRole("button", { name: "Put in" }).first().click();
      await next.getByTestId("confirm-merge").click();
      await expect(next.getByTestId("row-laneOnly")).toHaveCount(left);
    }
    await next.getByRole("button", { name: "Back to the court" }).click();
    await expect(pointsOn(next, "B")).toHaveText("40");
    await chart(next, "B");
    for (const phone of [next, first]) {
      await expect(pointsOn(phone, "A")).toHaveText("40");
      await expect(pointsOn(phone, "B")).toHaveText("Ad");
    }
    const matchId = await onlyMatch(director, product.url, day);
    const { view } = await stored(director, product.url, matchId);
    expect(winners(view)).toBe("AABBBAB");
    const lanes = view.points.map(({ laneId }) => laneId);
    expect(lanes.map((laneId) => (laneId === lanes[0] ? "first" : "next"))).toEqual([
      ...["first", "first", "first", "first", "first"],
      ...["next", "next"],
    ]);
  });
});
