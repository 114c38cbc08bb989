import { type BrowserContext, expect, type Page } from "@playwright/test";
import { chartPoint, serverOn } from "../fixtures/chart-court.ts";
import { test } from "../fixtures/demo-product.ts";
import { EVERYWHERE, lookAt, SIZES } from "../fixtures/look-at.ts";
import { makeOneCourtDay, openPhone, startCharting } from "../fixtures/one-court-day.ts";
import { enterWall, readWallCode } from "../fixtures/open-wall.ts";
import { watchWire } from "../fixtures/watch-wire.ts";

/** A player of the demonstration whose seasons give a usual rate. */
const OWN = "Noor V.";
const CHARTIST = "Ioan P.";
/** Three games lost to love, one missed line ball in each point: ends were changed after the first and the third. */
const MISSES = 12;
/** A line ball of the own player from the deuce corner that goes long, by who serves. */
const LONG = { A: "first C>R D>Rlong", B: "first D>L C>R D>Rlong" } as const;

const MOST_UNDONE = MISSES * 8;

const allSent = (phone: Page) => expect(phone.getByTestId("unsent")).toHaveText(/All sent/);

test.describe("an alert, from the court to whom it is for", () => {
  const contexts: BrowserContext[] = [];
  test.afterAll(async () => {
    for (const context of contexts) await context.close();
  });

  test("[AS10, AS13, AS14, AS17, AS22, AS24] is raised, noticed once, worked on, opened and withdrawn; a wall and a helper are sent none of it", async ({
    browser,
    demo,
  }) => {
    test.setTimeout(900_000);
    const director = await demo.asDirector(browser);
    contexts.push(director);
    const board = await director.newPage();
    await board.setViewportSize(SIZES.wall);
    const day = await makeOneCourtDay(board, demo.url, {
      name: "Alerts",
      own: OWN,
      opponent: "Visitor basalt",
    });
    const wallCode = await readWallCode(board);
    await board.goto(`${demo.url}/board/${day.dayId}`);
    await expect(board.getByTestId("no-alerts")).toHaveText("No alerts. No court is being watched.");

    const screen = await browser.newContext({ viewport: SIZES.wall });
    contexts.push(screen);
    const wall = await screen.newPage();
    const onWall = watchWire(wall);
    await enterWall(wall, demo.url, wallCode);
    const pocket = await demo.asDirector(browser);
    contexts.push(pocket);
    const mine = await pocket.newPage();
    await mine.setViewportSize(SIZES.phone);
    await mine.goto(`${demo.url}/board/${day.dayId}`);
    await expect(mine.getByTestId("tile-1")).toBeVisible();

    const { context, phone } = await openPhone(browser);
    contexts.push(context);
    const onPad = watchWire(phone);
    await startCharting(phone, demo.url, day, CHARTIST);
    for (let i = 0; i < MISSES; i += 1) await chartPoint(phone, LONG[await serverOn(phone)]);
    await allSent(phone);

    // The board: tile, sentence, and what is done about it.
    const alert = board.getByTestId("panel").getByTestId("alert");
    await expect(board.getByTestId("tile-1")).toHaveAttribute("data-alert", "standing");
    await expect(alert.getByTestId("alert-sentence")).toHaveText(
      /^12 of 12 line balls missed, (usually|academy level) \d in 10; .*since 0–0 in the first\.$/,
    );
    await alert.getByRole("button", { name: "Seen" }).click();
    await expect(alert.getByTestId("done-about")).toContainText(/Seen by .+ \d\d:\d\d/);
    await alert.getByRole("button", { name: "Assign" }).click();
    await alert.getByLabel("Who looks after it").selectOption({ label: "Tobias A." });
    await expect(alert.getByTestId("done-about")).toContainText(/Assigned to Tobias A\. by .+/);
    await alert.getByRole("button", { name: "Useful", exact: true }).click();
    await expect(alert.getByTestId("done-about")).toContainText(/Useful, said /);

    // The phone in a pocket: told once, not again after a reload.
    await expect(mine.getByTestId("notice")).toContainText("12 of 12 line balls missed");
    await mine.getByTestId("notice").getByRole("button", { name: "Put away" }).click();
    await mine.reload();
    await expect(mine.getByTestId("alert-strip")).toContainText(OWN);
    await expect(mine.getByTestId("notice")).toHaveCount(0);

    await alert.getByRole("button", { name: "Snooze" }).click();
    await alert.getByLabel("Why").fill("Talked at the change of ends");
    await alert.getByRole("form", { name: "Snooze" }).getByRole("button", { name: "Snooze" }).click();
    await expect(alert.getByTestId("snoozed")).toContainText(
      /until the set ends: Talked at the change of ends/,
    );
    await expect(board.getByTestId("tile-1")).toHaveAttribute("data-alert", "snoozed");
    await alert.getByRole("button", { name: "End snooze" }).click();
    await expect(alert.getByTestId("snoozed")).toHaveCount(0);

    // The match's page, with the points behind it.
    await alert.getByRole("link", { name: /^Open its points/ }).click();
    const court = board.getByTestId("court-alerts");
    await expect(court.getByTestId("attempts").getByRole("listitem")).toHaveCount(MISSES);
    await expect(board.getByRole("button", { name: "Showing its shots" }).first()).toBeVisible();
    await expect(board.getByTestId("shot-count")).toHaveText(`${MISSES} shots, ${MISSES} missed`);
    await lookAt(board, "court-alert", EVERYWHERE);
    await board.setViewportSize(SIZES.wall);

    // A correction takes the evidence away: the pad takes back point by point, and each of them ball by ball.
    const state = court.getByTestId("alert-state").first();
    for (let i = 0; i < MOST_UNDONE && !/Withdrawn/.test((await state.textContent()) ?? ""); i += 1) {
      await phone.getByTestId("undo").click();
      await allSent(phone);
    }
    await expect(state).toHaveText(
      /^Withdrawn \d\d:\d\d\. A correction by Ioan P\. changed what was charted\.$/,
    );

    await expect.poll(() => onWall.events()).toContain("board.tile");
    for (const wire of [onWall, onPad]) {
      expect(wire.events().filter((event) => event.startsWith("alert"))).toEqual([]);
      expect(wire.keys()).not.toContain("alerts");
      expect(await wire.text()).not.toMatch(/line balls missed|offPlan|usually/);
    }
  });
});
