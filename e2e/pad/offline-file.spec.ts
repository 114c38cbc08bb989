import { readFileSync } from "node:fs";
import { expect, type Page } from "@playwright/test";
import { chartPoint } from "../fixtures/chart-court.ts";
import { findViolations } from "../fixtures/find-violations.ts";
import { picturePath } from "../fixtures/look-at.ts";
import { test } from "./offline-day.ts";
import { allSent, startCharting } from "./pad-day.ts";
import { agrees, entriesOnPhone, untilKept } from "./phone-outbox.ts";

/** Presses a button of "This phone" and answers the saved file's name and text. */
const save = async (
  page: Page,
  button: string,
): Promise<{ readonly name: string; readonly text: string }> => {
  const downloads = page.waitForEvent("download");
  await page
    .getByRole("group", { name: "Save to a file" })
    .getByRole("button", { name: button, exact: true })
    .click();
  const saved = await downloads;
  return { name: saved.suggestedFilename(), text: readFileSync(await saved.path(), "utf8") };
};

const choose = (desk: Page, name: string, text: string): Promise<void> =>
  desk
    .getByLabel("File from a phone")
    .setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });

test.describe("a file from a phone", () => {
  test("[PD44, PD45, SY21, AP12, AP13, AP14, WB13] is taken in at the desk, and the phone's own sending later doubles nothing", async ({
    day,
  }) => {
    const page = await startCharting(day, 4, "Ioan P.");
    for (let i = 0; i < 2; i += 1) await chartPoint(page, "ace");
    await allSent(page);
    await untilKept(page);
    await page.context().setOffline(true);
    for (let i = 0; i < 5; i += 1) await chartPoint(page, i % 2 === 0 ? "double" : "ace");
    await expect(page.getByTestId("unsent")).toHaveText("5 unsent");

    await page.getByTestId("more").click();
    const about = page.getByTestId("this-phone");
    await expect(about).toContainText(/Kept:|May be cleared:/);
    await expect(about).toContainText("Opens without a network.");
    const unsent = await save(page, "Save unsent to a file");
    expect(unsent.name).toMatch(/^courtloom-court-4-\d{4}-\d\d-\d\d\.json$/);
    await expect(page.getByTestId("saved")).toContainText("5 entries saved as courtloom-court-4-");
    const whole = await save(page, "Save everything of this match");
    for (const { text } of [unsent, whole]) expect(text).not.toMatch(/Noor|Otto|Ioan|Court/);
    await about.scrollIntoViewIfNeeded();
    await page.screenshot({ path: picturePath("pad-this-phone") });
    expect(await findViolations(page)).toEqual([]);

    const desk = await day.desk.context().newPage();
    await desk.goto(`${day.product.url}/desk`);
    await desk.getByRole("link", { name: "Take in entries from a file" }).click();
    await choose(desk, "shopping.txt", "milk, eggs");
    await expect(desk.getByRole("main").getByRole("alert")).toContainText("This file cannot be read.");
    await choose(desk, "other.json", '{"hello":1}');
    await expect(desk.getByRole("main").getByRole("alert")).toContainText(
      "This is not a file that a pad saved.",
    );
    await choose(desk, unsent.name, unsent.text);
    const lanes = desk.getByTestId("import-lanes");
    await expect(lanes).toContainText("Noor V. – Otto R.");
    await expect(lanes).toContainText("Charted by Ioan P.");
    await expect(lanes).toContainText("5 new");
    await desk.screenshot({ path: picturePath("desk-import"), fullPage: true });
    expect(await findViolations(desk)).toEqual([]);
    expect((await day.logOf(4)).filter(({ entry }) => entry.body.kind === "PointCharted")).toHaveLength(2);
    await desk.getByRole("button", { name: "Take in 5 entries" }).click();
    await expect(lanes).toContainText("5 entries taken in.");

    // The same again, and everything of the match: nothing is new.
    await choose(desk, whole.name, whole.text);
    await expect(desk.getByText("Nothing in this file is new.")).toBeVisible();
    await desk.close();

    await page.getByRole("button", { name: "Back to the court" }).click();
    await page.context().setOffline(false);
    await allSent(page);
    agrees(await day.logOf(4), await entriesOnPhone(page), 7);
    await chartPoint(page, "ace");
    await allSent(page);
    agrees(await day.logOf(4), await entriesOnPhone(page), 8);
  });
});
