import { type BrowserContext, expect, type Page } from "@playwright/test";
import { COURT_1_POINTS } from "../day/points.ts";
import { chartPoint } from "../fixtures/chart-court.ts";
import { test } from "../fixtures/demo-product.ts";
import { makeOneCourtDay, type OneCourtDay, openPhone, startCharting } from "../fixtures/one-court-day.ts";
import { enterWall, readWallCode } from "../fixtures/open-wall.ts";
import { watchWire } from "../fixtures/watch-wire.ts";

const CHARTIST = "Ioan P.";
/** A player of the demonstration whose seasons give a usual rate. */
const OWN = "Noor V.";

/** What arrives, not what is drawn: anybody can read what their browser was sent. */
test.describe("who is sent what", () => {
  const contexts: BrowserContext[] = [];
  let desk: Page;
  let day: OneCourtDay;
  let matchId: string;

  test.beforeAll(async ({ browser, demo }) => {
    const director = await demo.asDirector(browser);
    contexts.push(director);
    desk = await director.newPage();
    day = await makeOneCourtDay(desk, demo.url, {
      name: "Who sees what",
      own: OWN,
      opponent: "Visitor loam",
    });
    const href = await desk.getByRole("link", { name: "Court page" }).getAttribute("href");
    matchId = href?.split("/").at(-1) ?? "";
  });
  test.afterAll(async () => {
    for (const context of contexts) await context.close();
  });

  test("[PR4, LV16] a helper's phone is sent no usual rate, figure or plan, and staff are", async ({
    browser,
    demo,
  }) => {
    const { context, phone } = await openPhone(browser);
    contexts.push(context);
    const helper = watchWire(phone);
    await startCharting(phone, demo.url, day, CHARTIST);
    for (const line of COURT_1_POINTS.slice(0, 3)) await chartPoint(phone, line);
    await expect(phone.getByTestId("unsent")).toHaveText(/All sent/);
    // A phone that comes back reads the whole log again.
    await phone.reload();
    await expect(phone.getByTestId("court")).toBeVisible();
    await expect.poll(() => helper.values("kind")).toContain("MatchOpened");

    expect(helper.keys()).not.toContain("usualRates");
    expect(helper.keys()).not.toContain("figures");
    expect(helper.keys()).not.toContain("lineMissed");
    expect(new Set(helper.values("planVersion"))).toEqual(new Set([null]));
    expect(new Set(helper.values("fitVersion"))).toEqual(new Set([null]));
    expect(new Set(helper.values("watches").map((watches) => JSON.stringify(watches)))).toEqual(
      new Set(["[]"]),
    );
    expect(await helper.text()).not.toMatch(/lineMissed|usualRate|usually/);

    const staff = await (contexts[0] as BrowserContext).newPage();
    const seen = watchWire(staff);
    await staff.goto(`${demo.url}/court/${matchId}`);
    await expect(staff.getByTestId("figures-A")).toBeVisible();
    await expect.poll(() => seen.keys()).toContain("usualRates");
    expect(seen.keys()).toContain("lineMissed");
    await staff.close();
  });

  test("[LV10, AU11] a wall is sent scores and order of play only", async ({ browser, demo }) => {
    await desk.goto(`${demo.url}/desk/${demo.dayId}`);
    const code = await readWallCode(desk);
    const screen = await browser.newContext();
    contexts.push(screen);
    const wall = await screen.newPage();
    const sent = watchWire(wall);
    await enterWall(wall, demo.url, code);
    await expect(wall.getByTestId("score").first()).toBeAttached();
    // The demonstration's phones go on charting: changes come as well as the first answer.
    await expect.poll(() => sent.events(), { timeout: 60_000 }).toContain("board.tile");
    await expect.poll(() => sent.events(), { timeout: 60_000 }).toContain("board.heard");

    expect(sent.keys()).toContain("score");
    for (const key of [
      "staff",
      "figures",
      "lineMissed",
      "chartist",
      "level",
      "coachingMode",
      "setAsideCount",
    ]) {
      expect(sent.keys(), key).not.toContain(key);
    }
    expect(new Set(sent.values("unsent"))).toEqual(new Set([null]));
    expect(await sent.text()).not.toMatch(/lineMissed|every ball|Coaching|Ioan P\.|Dana H\./);
  });

  test("[LV15, WB2, BD14] a court code opens no board, no court page, no desk and no wall, and is told what to do", async ({
    browser,
    demo,
  }) => {
    const { context, phone } = await openPhone(browser);
    contexts.push(context);
    await phone.goto(`${demo.url}/pad`);
    await phone.getByLabel("Court code").fill(day.code);
    await phone.getByLabel("Your name").fill("Dana H.");
    await phone.getByRole("button", { name: "Open the court" }).click();
    await expect(phone.getByTestId("court-name")).toBeVisible();

    for (const path of [`/board/${day.dayId}`, `/court/${matchId}`, `/desk/${day.dayId}`, "/desk"]) {
      await phone.goto(`${demo.url}${path}`);
      await expect(phone, path).toHaveURL(`${demo.url}/sign-in?from=${encodeURIComponent(path)}`);
      await expect(phone.getByRole("link", { name: "I have a court code: chart a match" })).toBeVisible();
    }
    const input = encodeURIComponent(JSON.stringify({ matchId, after: 0, limit: 10 }));
    const log = await phone.request.get(`${demo.url}/api/trpc/match.log?input=${input}`);
    expect([401, 403]).toContain(log.status());
    expect(await log.text()).not.toContain("MatchOpened");

    const sent = watchWire(phone);
    await phone.goto(`${demo.url}/wall/${day.dayId}`);
    await expect(phone.getByTestId("board-refused")).toHaveText(/The board is not shown.*Ask the/);
    expect(sent.keys()).not.toContain("tiles");
  });

  test("[WB5, AP2] who is signed out is led to sign in, and is sent nothing on the way", async ({
    browser,
    demo,
  }) => {
    const context = await browser.newContext();
    contexts.push(context);
    const page = await context.newPage();
    const sent = watchWire(page);
    for (const path of [`/board/${demo.dayId}`, `/court/${matchId}`, `/desk/${demo.dayId}`]) {
      await page.goto(`${demo.url}${path}`);
      await expect(page).toHaveURL(`${demo.url}/sign-in?from=${encodeURIComponent(path)}`);
    }
    await page.goto(`${demo.url}/wall/${demo.dayId}`);
    await expect(page.getByTestId("board-refused")).toContainText("Sign in");
    expect(sent.keys()).not.toContain("tiles");
    expect(await sent.text()).not.toMatch(/Noor V\.|Kaito L\.|Visitor/);
  });
});
