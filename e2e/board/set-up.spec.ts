import { expect, test } from "@playwright/test";
import { EVERYWHERE, lookAt } from "../fixtures/look-at.ts";
import { type RunningProduct, startProduct } from "../fixtures/product.ts";

/** A product that nobody has set up yet: what its first visitor meets. */
test.describe("the first visit", () => {
  let product: RunningProduct;

  test.beforeAll(async () => {
    test.setTimeout(600_000);
    product = await startProduct("set-up");
  });
  test.afterAll(async () => product?.stop());

  test("[AP5, WB4] leads to setting up, and looking round loads the demonstration and opens its board", async ({
    page,
  }) => {
    await page.goto(product.url);
    await expect(page).toHaveURL(`${product.url}/setup`);
    await lookAt(page, "set-up", EVERYWHERE);

    await page.getByRole("button", { name: "Look round with the demo academy" }).click();
    const progress = page.getByRole("progressbar", { name: "Loading the demo academy" });
    await expect(progress).toBeVisible();
    await expect(page).toHaveURL(/\/board\/.+/, { timeout: 120_000 });
    for (const court of [1, 2, 3, 4, 5, 6, 7, 8]) {
      await expect(page.getByTestId(`tile-${court}`)).toBeVisible();
    }
    // The demonstration's phones begin by themselves.
    await expect(page.locator('[data-state="playing"][data-freshness="heard"]').first()).toBeVisible({
      timeout: 60_000,
    });
  });

  test("[AU1, WB6] a password that is too easy is told beside its field, and nothing is set up", async ({
    page,
  }) => {
    await page.goto(`${product.url}/setup`);
    await page.getByLabel("Name of the academy").fill("Curlew Reach Test");
    await page.getByLabel("Time zone").selectOption("Europe/Lisbon");
    await page.getByLabel("Your name").fill("Maren H.");
    await page.getByLabel("Your e-mail address").fill("maren@curlew-reach.example");
    await page.getByLabel("Password").fill("password1");
    await page.getByRole("button", { name: "Set up my academy" }).click();
    await expect(page.getByLabel("Password")).toHaveAttribute("aria-invalid", "true");
    await expect(page).toHaveURL(`${product.url}/setup`);
    await lookAt(page, "set-up-refused", [{ size: "phone", scheme: "light", thorough: true }]);
  });
});
