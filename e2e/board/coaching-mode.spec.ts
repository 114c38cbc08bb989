import { type BrowserContext, expect, type Page } from "@playwright/test";
import { chartPoint, enterCourt, rememberLevel } from "../fixtures/chart-court.ts";
import { test } from "../fixtures/demo-product.ts";
import { findViolations } from "../fixtures/find-violations.ts";
import { makeOneCourtDay, type OneCourtDay, openPhone } from "../fixtures/one-court-day.ts";
import { watchWire } from "../fixtures/watch-wire.ts";

const OWN = "Noor V.";
const SENTENCE = "Wait for the ball that sits up, Noor.";
const QUESTION = "Which ball did you change on?";
const WORDS_PATH = "/api/courtside/words";

/** What a staff pad shows of the plan follows what the desk says, there and then. */
test.describe("coaching mode on the pad", () => {
  const contexts: BrowserContext[] = [];
  let desk: Page;
  let pad: Page;
  let day: OneCourtDay;
  let matchId: string;

  const say = async (mode: string): Promise<void> => {
    await desk.getByLabel("Coaching").first().selectOption({ label: mode });
    await expect(desk.getByText("Setting it")).toHaveCount(0);
    await desk.reload();
    await expect(desk.getByLabel("Coaching").first().locator("option:checked")).toHaveText(mode);
  };

  test.beforeAll(async ({ browser, demo }) => {
    const director = await demo.asDirector(browser);
    contexts.push(director);
    desk = await director.newPage();
    await desk.goto(`${demo.url}/plans/academy`);
    await desk.getByLabel("One sentence for the change of ends").fill(SENTENCE);
    await desk.getByLabel("One question for the change of ends").fill(QUESTION);
    await desk.getByRole("button", { name: /^Save version/ }).click();
    await expect(desk.getByText(/^Saved as version/)).toBeVisible();
    const plan = { name: "Coaching mode", own: OWN, opponent: "Visitor silt" };
    day = await makeOneCourtDay(desk, demo.url, plan);
    const href = await desk.getByRole("link", { name: "Court page" }).getAttribute("href");
    matchId = href?.split("/").at(-1) ?? "";
    await say("Practice");
    pad = await director.newPage();
    await pad.setViewportSize({ width: 390, height: 844 });
    await rememberLevel(pad, "every");
    await pad.goto(`${demo.url}/pad?match=${matchId}`);
    for (const question of ["Who serves first?", "Who is at the near or left end?"])
      await pad.getByRole("group", { name: question }).getByRole("button", { name: OWN }).click();
    await pad.getByTestId("start").click();
    await expect(pad.getByTestId("court")).toBeVisible();
  });
  test.afterAll(async () => {
    for (const context of contexts) await context.close();
  });

  test("[CM10] in practice staff read the plan between points and at a change one sentence and one question", async () => {
    const plan = pad.getByTestId("plan-words");
    await expect(plan).toContainText("build the point cross-court");
    await plan.click();
    await expect(plan).toHaveAttribute("aria-expanded", "true");
    await plan.click();
    const box = await pad.getByTestId("court").boundingBox();
    await pad.getByRole("button", { name: "First in", exact: true }).click();
    await expect(plan).toBeHidden();
    // Nothing moves under the finger when a point begins.
    expect(await pad.getByTestId("court").boundingBox()).toEqual(box);
    await pad.getByTestId("undo").click();
    await expect(plan).toBeVisible();
    for (let point = 0; point < 4; point += 1) await chartPoint(pad, "ace");
    await expect(pad.getByTestId("court-sentence")).toHaveText(SENTENCE);
    await expect(pad.getByTestId("court-question")).toHaveText(QUESTION);
    await expect(plan).toHaveCount(0);
    await expect(pad.getByTestId("court-sentence")).toHaveCSS("font-style", "italic");
    expect(await findViolations(pad)).toEqual([]);
    await pad.getByRole("button", { name: "Fault", exact: true }).click();
    await expect(pad.getByTestId("court-sentence")).toBeHidden();
    await pad.getByTestId("undo").click();
    await expect(pad.getByTestId("court-sentence")).toBeVisible();
  });

  test("[CM6, CM9] another mode said at the desk takes them away, and what opens then is sent none", async ({
    demo,
  }) => {
    await say("Not known");
    await expect(pad.getByTestId("court-words")).toHaveCount(0);
    const again = await pad.context().newPage();
    const sent = watchWire(again);
    await again.goto(`${demo.url}/pad?match=${matchId}`);
    await expect(again.getByTestId("court")).toBeVisible();
    await expect.poll(() => sent.text()).toContain('{"said":null}');
    const text = await sent.text();
    for (const word of [SENTENCE, QUESTION, "usualRates", "lineOn", "cross-court, and go down"])
      expect(text, word).not.toContain(word);
    await again.close();
    await say("Permitted");
    await expect(pad.getByTestId("court-sentence")).toHaveText(SENTENCE);
    await pad.context().setOffline(true);
    await expect(pad.getByTestId("court-words")).toHaveCount(0);
    await pad.context().setOffline(false);
    await expect(pad.getByTestId("court-sentence")).toHaveText(SENTENCE);
  });

  test("[CM7, CM9] a helper's pad never asks for them, and is refused where it does", async ({
    browser,
    demo,
  }) => {
    const { context, phone } = await openPhone(browser);
    contexts.push(context);
    const asked: string[] = [];
    phone.on("request", (request) => asked.push(request.url()));
    const sent = watchWire(phone);
    await enterCourt(phone, demo.url, day.code, "Dana H.");
    await expect(phone.getByTestId("court-name")).toBeVisible();
    await expect(phone.getByTestId("pad")).toContainText("Maren H. charts this court");
    expect(asked.filter((url) => url.includes(WORDS_PATH))).toEqual([]);
    const answer = await phone.request.get(`${demo.url}${WORDS_PATH}?match=${matchId}`);
    expect(answer.status()).toBe(403);
    expect(await answer.text()).not.toContain(SENTENCE);
    expect(await sent.text()).not.toMatch(/Wait for the ball|Which ball did you|usualRates|lineOn/);
  });
});
