import { type Browser, type BrowserContext, expect, type Page, test } from "@playwright/test";
import { EVERYWHERE, lookAt, picturePath, SIZES } from "../fixtures/look-at.ts";
import { type RunningProduct, startProduct } from "../fixtures/product.ts";
import { addMatch, DIRECTOR, makeDay, setUpAcademy } from "../fixtures/set-up-day.ts";
import { drawBall, drawBallByFinger } from "./draw-ball.ts";

const PLAYER = "Noor V.";

/** One academy, whose plan is begun, changed, tried and disputed, in the order in which coaches meet these. */
test.describe
  .serial("plans", () => {
    let product: RunningProduct;
    let browserOf: Browser;
    let context: BrowserContext;
    let page: Page;

    test.beforeAll(async ({ browser }) => {
      test.setTimeout(600_000);
      browserOf = browser;
      product = await startProduct("plans");
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

    const verdict = (at: Page) => at.getByTestId("verdict");
    const saveState = (at: Page) => at.getByTestId("save-state");
    const rule = (at: Page, heading: string) =>
      at.getByRole("listitem").filter({ has: at.getByRole("heading", { name: heading, level: 3 }) });
    const openPlan = async (at: Page, name: string): Promise<void> => {
      await at.goto(`${product.url}/plans`);
      await at.getByRole("link", { name }).click();
      await expect(saveState(at)).toBeVisible();
    };

    test("[PL1] begins with the starter plan, from the places every screen names", async () => {
      await page.getByRole("link", { name: "Plans" }).click();
      await expect(page.getByText("No plan yet.")).toBeVisible();
      await lookAt(page, "plans-none", EVERYWHERE);
      await page.setViewportSize(SIZES.desktop);
      await page.getByRole("button", { name: "Begin with the starter plan" }).click();
      await expect(page).toHaveURL(/\/plans\/academy$/);
      await expect(saveState(page)).toHaveText("Version 1");
      await expect(page.getByRole("heading", { level: 3, name: "Behind the baseline" })).toBeVisible();
      await expect(page.getByText("From the starter plan")).toBeVisible();
    });

    test("[PL5, PL6] a ball drawn with the mouse is judged, with the rule and the condition", async () => {
      await drawBall(page, { x: -3, y: -12.5 }, { x: -3, y: 9 });
      await expect(verdict(page)).toContainText("Struck behind the baseline, from the left. Down the line.");
      await expect(verdict(page)).toHaveAttribute("data-verdict", "unknown");
      await expect(verdict(page)).toContainText("Answer that to know.");
      const ball = page.getByRole("group", { name: /^The ball/ });
      await ball.getByRole("button", { name: "Sits up" }).click();
      await expect(verdict(page)).toContainText("On plan");
      await expect(verdict(page)).toContainText("The line is on: the ball sits up.");
      await expect(rule(page, "Behind the baseline").last()).toContainText("Holds for the ball drawn");
      await ball.getByRole("button", { name: "Low", exact: true }).click();
      await page
        .getByRole("group", { name: /^The opponent/ })
        .getByRole("button", { name: "Set" })
        .click();
      await expect(verdict(page)).toContainText("Off plan");
      await expect(verdict(page)).toContainText("The line is not on");
    });

    test("[PL5] the same ball is chosen by keyboard alone", async () => {
      await page.getByRole("button", { name: "Take the ball away" }).click();
      const press = async (group: string, name: string): Promise<void> => {
        await page.getByRole("group", { name: group }).getByRole("button", { name, exact: true }).focus();
        await page.keyboard.press("Space");
      };
      const try_ = page.getByRole("region", { name: "Try it" });
      await try_
        .getByRole("group", { name: "Struck from" })
        .getByRole("button", { name: "Behind the baseline" })
        .focus();
      await page.keyboard.press("Enter");
      await press("On the player's", "Right");
      await press("Sent to the player's", "Right");
      await expect(verdict(page)).toContainText("Struck behind the baseline, from the right. Down the line.");
      await press("The ball: not said", "Sits up");
      await expect(verdict(page)).toContainText("On plan");
      await press("Sent to the player's", "Left");
      await expect(verdict(page)).toContainText("Passed up");
      await lookAt(page, "plan-editor", EVERYWHERE);
      await page.setViewportSize(SIZES.desktop);
    });

    test("[PL5] what is not saved yet is tried too, and saved as the next version", async () => {
      const behind = rule(page, "Behind the baseline").last();
      await behind.getByRole("button", { name: "Change" }).click();
      await page.getByLabel("In your own words, of rule 3").fill("From the back: cross first, then look.");
      await page.getByRole("button", { name: "Take this condition out 1 of rule 3" }).click();
      await expect(verdict(page)).toContainText("Can't tell");
      await page.getByLabel("Share of these balls, % 1 of rule 3").fill("80");
      await expect(saveState(page)).toHaveText("Not saved yet");
      await lookAt(page, "plan-rule-open", EVERYWHERE.slice(0, 2));
      await page.setViewportSize(SIZES.desktop);
      await behind.getByRole("button", { name: "Close" }).click();
      await behind.getByRole("button", { name: "Move up" }).click();
      await expect(behind.getByRole("button", { name: "Move up" })).toBeFocused();
      await page.getByLabel("What changed, in a few words").fill("After Saturday");
      await page.getByRole("button", { name: "Save version 2" }).click();
      await expect(saveState(page)).toHaveText("Version 2");
      const newest = page.getByRole("listitem").filter({ hasText: "Version 2" });
      await expect(newest).toContainText("After Saturday");
      await expect(newest).toContainText(
        "Behind the baseline: the words, when the line is on and the targets changed.",
      );
      await expect(newest).toContainText("The order of the rules changed.");
    });

    test("[PL7] what cannot hold is told beside its rule, and nothing is sent", async () => {
      await page.getByRole("button", { name: "Add a rule" }).click();
      const added = rule(page, "Every ball").last();
      for (let up = 0; up < 4; up += 1) await added.getByRole("button", { name: "Move up" }).click();
      await page.getByRole("button", { name: "Save version 3" }).click();
      await expect(saveState(page)).toHaveText("4 rules have to be mended");
      await expect(
        page.getByText("Rules before it take all its balls, so it never holds.").first(),
      ).toBeVisible();
      await lookAt(page, "plan-problems", EVERYWHERE.slice(0, 1));
      await page.setViewportSize(SIZES.desktop);
    });

    test("[PL9] leaving asks, keeps what is not saved in this tab, and brings it back", async () => {
      await page.getByRole("link", { name: "All plans" }).click();
      await expect(page.getByRole("dialog", { name: "Your changes are not saved" })).toBeVisible();
      await lookAt(page, "plan-leave", EVERYWHERE.slice(0, 2));
      await page.setViewportSize(SIZES.desktop);
      await page.getByRole("button", { name: "Stay" }).click();
      await expect(page).toHaveURL(/\/plans\/academy$/);
      await page.getByRole("link", { name: "All plans" }).click();
      await page.getByRole("button", { name: "Leave, keep the changes" }).click();
      await expect(page.getByRole("heading", { level: 1, name: "Plans" })).toBeVisible();
      await page.getByRole("link", { name: "Open it" }).click();
      await expect(page.getByText("These are your changes from before.")).toBeVisible();
      await expect(rule(page, "Every ball").last()).toBeVisible();
      await page.getByRole("button", { name: "Drop changes" }).click();
      await expect(saveState(page)).toHaveText("Version 2");
    });

    test("[PL11, PL12] two browsers save over one version: nothing is lost, and both are put together", async () => {
      const other = await browserOf.newContext({ viewport: SIZES.phone, hasTouch: true });
      const phone = await other.newPage();
      await phone.goto(`${product.url}/sign-in?from=/plans/academy`);
      await phone.getByLabel("E-mail address").fill(DIRECTOR.email);
      await phone.getByLabel("Password").fill(DIRECTOR.password);
      await phone.getByRole("button", { name: "Sign in" }).click();
      await expect(saveState(phone)).toHaveText("Version 2");
      await openPlan(page, "Open it");

      await phone.getByLabel("The plan in your own words").fill("Build, then look.");
      await phone.getByRole("button", { name: "Save version 3" }).click();
      await expect(saveState(phone)).toHaveText("Version 3");

      const low = rule(page, "Inside the service line, the ball is low");
      await low.getByRole("button", { name: "Change" }).click();
      await page.getByLabel("In your own words, of rule 1").fill("Short and low: straight, and in.");
      await page.getByRole("button", { name: "Save version 3" }).click();
      const conflict = page.getByRole("region", { name: "Saved by somebody else meanwhile" });
      await expect(conflict).toContainText("saved version 3");
      await expect(conflict).toContainText("The words of the plan changed.");
      await expect(conflict).toContainText("Inside the service line, the ball is low: the words changed.");
      await lookAt(page, "plan-conflict", EVERYWHERE);
      await page.setViewportSize(SIZES.desktop);
      await conflict.getByRole("button", { name: "Put both together" }).click();
      await page.getByRole("button", { name: "Save version 4" }).click();
      await expect(saveState(page)).toHaveText("Version 4");
      await expect(page.getByLabel("The plan in your own words")).toHaveValue("Build, then look.");

      await drawBallByFinger(phone, { x: 3, y: -8 }, { x: -3, y: 9 });
      await expect(verdict(phone)).toContainText("Struck inside the baseline, from the right. Cross-court.");
      await phone.screenshot({ path: picturePath("plan-by-finger-phone-light") });
      await other.close();
    });

    test("[PL3, PL4] a player's plan changes single rules of the academy's", async () => {
      await openPlan(page, PLAYER);
      await expect(page.getByRole("heading", { level: 1 })).toHaveText(`Plan for ${PLAYER}`);
      const behind = rule(page, "Behind the baseline").last();
      await behind.getByRole("button", { name: "Change for this player" }).click();
      await page.getByLabel(/^In your own words, of rule/).fill("Noor: from the left keep it twice.");
      await rule(page, "Inside the baseline").last().getByRole("button", { name: "Leave out" }).click();
      await page.getByRole("button", { name: "Add an own rule" }).click();
      const own = rule(page, "Every ball").last();
      const opponent = own.getByRole("group", { name: /^The opponent/ }).first();
      await opponent.getByRole("button", { name: "At the net" }).click();
      await expect(rule(page, "The opponent is at the net").last()).toBeVisible();
      await drawBall(page, { x: -3, y: -9 }, { x: -3, y: 9 });
      await page
        .getByRole("region", { name: "Try it" })
        .getByRole("group", { name: /^The opponent/ })
        .getByRole("button", { name: "Set" })
        .click();
      await expect(verdict(page)).toContainText("No rule is for this ball.");
      await page.getByRole("button", { name: "Save version 1" }).click();
      await expect(saveState(page)).toHaveText("Version 1");
      await lookAt(page, "plan-of-player", EVERYWHERE);
      await page.setViewportSize(SIZES.desktop);
      await page.getByRole("link", { name: "All plans" }).click();
      await expect(page.getByRole("link", { name: PLAYER })).toContainText(
        "1 own rule, 1 changed, 1 left out",
      );
      await lookAt(page, "plans-list", EVERYWHERE);
    });
  });
