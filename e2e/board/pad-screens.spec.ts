import { type BrowserContext, expect, type Page } from "@playwright/test";
import { COURT_1_POINTS } from "../day/points.ts";
import { chartPoint, drawPoint } from "../fixtures/chart-court.ts";
import { test } from "../fixtures/demo-product.ts";
import { findFaintText } from "../fixtures/find-violations.ts";
import { EVERYWHERE, type Look, lookAt, SIZES } from "../fixtures/look-at.ts";
import { makeOneCourtDay, type OneCourtDay, openPhone, startCharting } from "../fixtures/one-court-day.ts";

/** In the sun there is one ground, whatever the phone is set to. */
const IN_THE_SUN: readonly Look[] = [
  { size: "phone", scheme: "light", thorough: true },
  { size: "smallPhone", scheme: "light" },
];

const ON_A_PHONE: readonly Look[] = [
  { size: "phone", scheme: "dark", thorough: true },
  { size: "smallPhone", scheme: "light" },
];

const chooseTheme = async (phone: Page, name: string): Promise<void> => {
  await phone.getByTestId("more").click();
  await phone.getByRole("group", { name: "Screen" }).getByRole("button", { name, exact: true }).click();
  await phone.getByRole("button", { name: "Back to the court" }).click();
};

/** The pad as a helper with a code meets it, on a day of its own, so that no other phone leads. */
test.describe("the pad's screens", () => {
  let context: BrowserContext;
  let phone: Page;
  let day: OneCourtDay;

  test.beforeAll(async ({ browser, demo }) => {
    const director = await demo.asDirector(browser);
    day = await makeOneCourtDay(await director.newPage(), demo.url, {
      name: "Pad",
      own: "Sorrel N.",
      opponent: "Visitor chert",
    });
    await director.close();
    ({ context, phone } = await openPhone(browser));
  });
  test.afterAll(async () => context?.close());

  test("[PD18, AU11] a wrong court code is told in a sentence, at every size", async ({ demo }) => {
    await phone.goto(`${demo.url}/pad`);
    await phone.getByLabel("Court code").fill("ZZZ 222");
    await phone.getByLabel("Your name").fill("Ioan P.");
    await phone.getByRole("button", { name: "Open the court" }).click();
    await expect(phone.getByTestId("enter-problem")).toBeVisible();
    await lookAt(phone, "pad-entry-refused", EVERYWHERE);
  });

  test("[PD13, PD15, PD16] before, in and after a rally the pad serves every size, light, dark and in the sun", async ({
    demo,
  }) => {
    await phone.setViewportSize(SIZES.phone);
    await startCharting(phone, demo.url, day, "Ioan P.");
    await chartPoint(phone, COURT_1_POINTS[0] ?? "");
    await lookAt(phone, "pad-before", EVERYWHERE);

    await phone.setViewportSize(SIZES.phone);
    const finish = await drawPoint(phone, COURT_1_POINTS[1] ?? "");
    await lookAt(phone, "pad-rally", EVERYWHERE);

    await phone.setViewportSize(SIZES.phone);
    await chooseTheme(phone, "Sun");
    await lookAt(phone, "pad-rally-sun", IN_THE_SUN);
    expect(await findFaintText(phone)).toEqual([]);

    await phone.setViewportSize(SIZES.phone);
    await finish();
    await lookAt(phone, "pad-after-sun", IN_THE_SUN);
    expect(await findFaintText(phone)).toEqual([]);
    await phone.setViewportSize(SIZES.phone);
    await chooseTheme(phone, "As phone");
    await lookAt(phone, "pad-after", EVERYWHERE);
    await phone.getByTestId("done").click();
    await expect(phone.getByTestId("done")).toContainText("when it is said who won");
    await phone.setViewportSize(SIZES.phone);
    await phone.getByTestId("more").click();
    await lookAt(phone, "pad-more", ON_A_PHONE);
  });
});
