import { expect, type Page, test } from "@playwright/test";
import { EVERYWHERE, lookAt, picturePath, SIZES } from "../fixtures/look-at.ts";
import { openPhone, startCharting } from "../fixtures/one-court-day.ts";
import { type RunningProduct, startProduct } from "../fixtures/product.ts";
import { addMatch, makeCodes, makeDay, setUpAcademy } from "../fixtures/set-up-day.ts";
import { allSent, chooseInMore, logsOn } from "../pad/pad-day.ts";
import { handTally, laneFile } from "./sixty-points.ts";

const PLAYER = "Noor V.";

/** An academy whose one match is the sheet of sixty points that was tallied by hand. */
test.describe
  .serial("the match tallied by hand", () => {
    let product: RunningProduct;
    let page: Page;

    test.beforeAll(async ({ browser }) => {
      test.setTimeout(600_000);
      product = await startProduct("figures");
      page = await (await browser.newContext({ viewport: SIZES.desktop })).newPage();
      await setUpAcademy(page, product.url);
      await page.goto(`${product.url}/plans`);
      await page.getByRole("button", { name: "Begin with the starter plan" }).click();
      await expect(page.getByTestId("save-state")).toHaveText("Version 1");
      await page.goto(`${product.url}/desk`);
      await makeDay(page, "Sixty points", 1);
      await addMatch(page, { court: 1, own: PLAYER, opponent: "Elsbeth K.", format: "Best of 3 sets" });
    });
    test.afterAll(async () => {
      await page?.context().close();
      await product?.stop();
    });

    test("[PF7, PF16] a player of whom nothing is charted is on the list, and the page says what to do", async () => {
      const desk = page.url();
      await page.getByRole("navigation", { name: "Academy" }).getByRole("link", { name: "Players" }).click();
      await lookAt(page, "players", EVERYWHERE);
      await page.setViewportSize(SIZES.desktop);
      await page.getByRole("link", { name: PLAYER, exact: true }).click();
      await expect(page.getByText(`No match of ${PLAYER} is charted yet.`)).toBeVisible();
      await lookAt(page, "player-none", EVERYWHERE.slice(0, 3));
      await page.setViewportSize(SIZES.desktop);
      await page.goto(desk);
    });

    test("[PF17] every figure on the page is what the hand found", async ({ browser }) => {
      const codeOf = await makeCodes(page);
      const { context, phone } = await openPhone(browser);
      await startCharting(phone, product.url, { code: await codeOf(1), own: PLAYER }, "Ioan P.");
      await chooseInMore(phone, "Level", "Key balls");
      await allSent(phone);
      await context.close();
      const { logOf, matchOf } = logsOn(page, product.url);
      const lane = (await logOf(1)).filter(({ epoch }) => epoch !== 0);
      const text = laneFile({
        laneId: lane[0]?.laneId ?? "",
        matchId: await matchOf(1),
        after: lane.at(-1)?.entry.n ?? 0,
      });
      await page.goto(`${product.url}/desk/import`);
      await page
        .getByLabel("File from a phone")
        .setInputFiles({ name: "sixty.json", mimeType: "application/json", buffer: Buffer.from(text) });
      await page.getByRole("button", { name: "Take in 61 entries" }).click();
      await expect(page.getByTestId("import-lanes")).toContainText("61 entries taken in.");

      await page.goto(`${product.url}/players`);
      await page.getByRole("link", { name: PLAYER, exact: true }).click();
      await expect(page).toHaveURL(/\/players\/.+/);
      // The match is over once the live server has folded what the file brought.
      await expect(async () => {
        await page.reload();
        await expect(page.getByTestId("standing")).toHaveText("1 match, 60 points.", { timeout: 5_000 });
      }).toPass({ timeout: 60_000 });
      for (const [name, { x, n }] of handTally()) {
        await expect(page.getByTestId(`figure-${name}`), name).toContainText(`${x} of ${n} `);
      }
      await expect(page.getByTestId("figure-lineMissed")).toContainText("10 of 24 line balls");
      await expect(page.getByTestId("figure-lineMissedOffPlan")).toContainText("6 of 9 missed line balls");
      await expect(page.getByTestId("figure-agreedTaken")).toContainText("8 of 19 moments");
      await expect(page.getByTestId("figure-hesitated")).toContainText("2 of 4");
      await page.screenshot({ path: picturePath("player-sixty-points"), fullPage: true });
    });

    test("[PF3, PF4, PF5] count first with its unit and interval; under five loose beads", async () => {
      const missed = page.getByTestId("figure-lineMissed");
      await expect(missed).toContainText("likely 24 to 61 in 100");
      await expect(missed.locator("circle")).toHaveCount(1);
      const hesitated = page.getByTestId("figure-hesitated");
      await expect(hesitated).toContainText("too few to say");
      await expect(hesitated).not.toContainText("in 100");
      await expect(hesitated.locator("circle")).toHaveCount(0);
      await expect(page.getByTestId("four-counts").getByRole("button")).toHaveText([
        /Right ball made.*10 of 24 balls/s,
        /Right ball missed.*3 of 24 balls/s,
        /Wrong ball made.*4 of 24 balls/s,
        /Wrong ball missed.*7 of 24 balls/s,
      ]);
    });

    test("[PF8, PF9] the points behind a figure are those of the sheet, and lead to the court page", async () => {
      await page.getByTestId("figure-lineMissedOffPlan").click();
      const dialog = page.getByRole("dialog", { name: "Missed line balls that were off plan" });
      await expect(dialog.getByTestId("point")).toHaveCount(9);
      await dialog.getByRole("button", { name: "The 6", exact: true }).click();
      await expect(dialog.getByTestId("point")).toHaveCount(6);
      await expect(dialog.getByTestId("left-out")).toContainText("charted in less detail");
      const points = await dialog.getByText(/\(point \d+,/).allTextContents();
      expect(points.map((text) => Number(/point (\d+)/.exec(text)?.[1]))).toEqual([2, 19, 24, 32, 42, 60]);
      await lookAt(page, "player-points", EVERYWHERE);
      await page.setViewportSize(SIZES.desktop);
      await page.goBack();
      await expect(dialog).toBeHidden();
      await page.getByTestId("figure-aces").focus();
      await page.keyboard.press("Enter");
      await expect(page.getByRole("dialog", { name: "Aces" })).toBeVisible();
      await page.keyboard.press("Escape");
      await expect(page.getByRole("dialog")).toBeHidden();
    });
  });
