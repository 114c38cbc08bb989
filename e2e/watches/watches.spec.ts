import { type Browser, type BrowserContext, expect, type Page, test } from "@playwright/test";
import { EVERYWHERE, lookAt, SIZES } from "../fixtures/look-at.ts";
import { type RunningProduct, startProduct } from "../fixtures/product.ts";
import { addMatch, DIRECTOR, makeDay, setUpAcademy } from "../fixtures/set-up-day.ts";

const PLAYER = "Noor V.";

/** One academy, whose watches are read, changed and disputed, in the order in which staff meet these. */
test.describe
  .serial("watches", () => {
    let product: RunningProduct;
    let browserOf: Browser;
    let context: BrowserContext;
    let page: Page;

    test.beforeAll(async ({ browser }) => {
      test.setTimeout(600_000);
      browserOf = browser;
      product = await startProduct("watches");
      context = await browser.newContext({ viewport: SIZES.desktop });
      page = await context.newPage();
      await setUpAcademy(page, product.url);
      await makeDay(page, "Spring match play", 1);
      await addMatch(page, {
        court: 1,
        own: PLAYER,
        opponent: "Visitor red",
        format: "2 short sets to 4, match tie-break to 10",
      });
    });
    test.afterAll(async () => {
      await context?.close();
      await product?.stop();
    });

    const state = (at: Page) => at.getByTestId("watch-state");
    const rate = (at: Page, label: string) => at.getByRole("checkbox", { name: label });
    const signIn = async (at: Page): Promise<void> => {
      await at.getByLabel("E-mail address").fill(DIRECTOR.email);
      await at.getByLabel("Password").fill(DIRECTOR.password);
      await at.getByRole("button", { name: "Sign in" }).click();
    };

    test("[WA23, WA25] shows what holds until somebody chooses, and what the academy has charted too little of", async () => {
      await page.getByRole("link", { name: "Watches" }).click();
      await expect(state(page)).toHaveText("Nobody has chosen yet; this holds until somebody does");
      await expect(rate(page, "Line balls missed")).toBeChecked();
      await expect(rate(page, "Agreed moments passed up")).not.toBeChecked();
      await expect(rate(page, "Line balls missed")).toHaveAccessibleDescription(
        /Not watched until the academy has charted 100 line balls; 0 so far\./,
      );
      await expect(page.getByLabel("False alerts")).toHaveAccessibleDescription(
        /About 1 alert in 20 matches of a player who plays as usual/,
      );
      await lookAt(page, "watches", EVERYWHERE);
      await page.setViewportSize(SIZES.desktop);
    });

    test("[WA23] is changed by keyboard, told what cannot be saved, saved, and there after a reload", async () => {
      await rate(page, "Line balls missed").focus();
      await page.keyboard.press("Space");
      await page.getByRole("button", { name: "Save version 1" }).click();
      await expect(page.getByText("Nothing is watched. Choose 1 to 4 rates.")).toBeVisible();
      await rate(page, "Line balls missed").press("Space");
      await rate(page, "Agreed moments passed up").press("Space");
      await page.getByLabel("False alerts").selectOption({ label: "About 1 match in 10" });
      await expect(page.getByText(/About 1 alert in 10 matches/)).toBeVisible();
      await page.getByRole("checkbox", { name: "Quiet" }).press("Space");
      await expect(state(page)).toHaveText("Not saved yet");
      await page.getByRole("button", { name: "Save version 1" }).press("Enter");
      await expect(state(page)).toContainText(`Version 1, saved by ${DIRECTOR.name}`);
      await expect(page.getByRole("status")).toContainText(
        "Matches that are open keep what they began with.",
      );
      await page.reload();
      await expect(state(page)).toContainText("Version 1");
      await expect(rate(page, "Agreed moments passed up")).toBeChecked();
      await expect(page.getByLabel("False alerts")).toHaveValue("0.1");
      await expect(page.getByRole("checkbox", { name: "Quiet" })).toBeChecked();
    });

    test("[WA26] a player is watched otherwise, and then as the academy's again", async () => {
      await page.getByRole("link", { name: PLAYER }).click();
      await expect(page.getByRole("heading", { level: 1 })).toHaveText(`Watches for ${PLAYER}`);
      await expect(page.getByRole("radio", { name: "As the academy's" })).toBeChecked();
      await expect(page.getByRole("region", { name: "Usual now" })).toContainText(
        "Not watched until the academy has charted 100 line balls; 0 so far.",
      );
      await page.getByRole("radio", { name: "Own settings" }).check();
      await rate(page, "Agreed moments passed up").uncheck();
      await page.getByRole("button", { name: "Save version 1" }).click();
      await expect(state(page)).toContainText("Version 1");
      await lookAt(page, "watches-player", EVERYWHERE);
      await page.setViewportSize(SIZES.desktop);
      await page.getByRole("link", { name: "All watches" }).click();
      await expect(page.getByRole("link", { name: PLAYER })).toContainText("own settings");
      await page.getByRole("link", { name: PLAYER }).click();
      await page.getByRole("radio", { name: "As the academy's" }).check();
      await page.getByRole("button", { name: "Save version 2" }).click();
      await expect(state(page)).toContainText("Version 2");
      await page.reload();
      await expect(page.getByRole("radio", { name: "As the academy's" })).toBeChecked();
    });

    test("[WA24] two browsers save over one version: nothing is lost", async () => {
      const other = await browserOf.newContext({ viewport: SIZES.phone, hasTouch: true });
      const phone = await other.newPage();
      await phone.goto(`${product.url}/watches`);
      await expect(phone).toHaveURL(/\/sign-in\?from=%2Fwatches$/);
      await signIn(phone);
      await expect(state(phone)).toContainText("Version 1");
      await page.goto(`${product.url}/watches`);

      await rate(phone, "Kept balls missed").check();
      await phone.getByRole("button", { name: "Save version 2" }).click();
      await expect(state(phone)).toContainText("Version 2");

      await page.getByLabel("False alerts").selectOption({ label: "About 1 match in 50" });
      await page.getByRole("button", { name: "Save version 2" }).click();
      const conflict = page.getByRole("region", { name: "Saved by somebody else meanwhile" });
      await expect(conflict).toBeFocused();
      await expect(conflict).toContainText("saved version 2");
      await expect(conflict).toContainText("Kept balls missed");
      await expect(conflict).toContainText("1 match in 50");
      await lookAt(page, "watches-conflict", EVERYWHERE);
      await page.setViewportSize(SIZES.desktop);
      await conflict.getByRole("button", { name: "Save mine as the next version" }).click();
      await expect(state(page)).toContainText("Version 3");
      await phone.reload();
      await expect(state(phone)).toContainText("Version 3");
      await expect(phone.getByLabel("False alerts")).toHaveValue("0.02");
      await expect(rate(phone, "Kept balls missed")).not.toBeChecked();
      await other.close();
    });

    test("[WA23] a save that is refused says why, and what was chosen stays", async () => {
      const away = await browserOf.newContext({ viewport: SIZES.desktop });
      const late = await away.newPage();
      await late.goto(`${product.url}/sign-in?from=/watches`);
      await signIn(late);
      await expect(state(late)).toContainText("Version 3");
      await rate(late, "Kept balls missed").check();
      await away.clearCookies();
      await late.getByRole("button", { name: "Save version 4" }).click();
      await expect(late.getByText("You are signed out. Sign in, then try again.")).toBeVisible();
      await expect(rate(late, "Kept balls missed")).toBeChecked();
      await away.close();
      await page.reload();
      await expect(state(page)).toContainText("Version 3");
    });
  });
