import { foldLog, type MatchView } from "@courtloom/match-log";
import { expect, type Page } from "@playwright/test";
import { addMatch, makeCodes, makeDay } from "../fixtures/set-up-day.ts";
import { allSent, chooseInMore, logsOn, OWN, type PadDay, padTest, startCharting } from "./pad-day.ts";

const test = padTest("endings");
const PICTURES = new URL("../../.tmp/e2e/pictures/", import.meta.url).pathname;
const HAPPENED = "What happened: penalty, server, score, suspended, ended";
const BOUNCE_MS = 500;

const viewOf = async (day: Pick<PadDay, "logOf">, court: number): Promise<MatchView> => {
  const view = foldLog(await day.logOf(court));
  if (!view.ok) throw new Error(view.error);
  return view.value;
};

const press = (page: Page, group: string, button: string) =>
  page.getByRole("group", { name: group }).getByRole("button", { name: button, exact: true }).click();

const confirm = async (page: Page): Promise<void> => {
  await page.getByRole("button", { name: "Confirm", exact: true }).click();
  await expect(page.getByTestId("change")).toBeHidden();
};

/** One touch for whoever won it, later than a finger bounces. */
const touch = async (page: Page, letters: string): Promise<void> => {
  for (const side of letters) {
    await page.getByTestId(`point-${side}`).click();
    const since = await page.evaluate(() => performance.now());
    await page.waitForFunction((until) => performance.now() > until, since + BOUNCE_MS);
  }
};

const RULE = [
  ["An unfinished game", "The leader gets it"],
  ["Sets level: which games count", "Of the whole match"],
  ["Games level: points of the game that did not count", "Decide"],
  ["All level", "A draw"],
] as const;

test.describe("ends of a match that nobody plays to its end, and whose balls are charted", () => {
  test("[SC29, PD84] a walkover, taken back, and a match not played", async ({ day }) => {
    const page = await startCharting(day, 1, "Ioan P.");
    await chooseInMore(page, "Put right", HAPPENED);
    await press(page, "The match ends here", "Walkover: Elsbeth is not here");
    await expect(page.getByTestId("change-score")).toBeVisible();
    await confirm(page);
    await expect(page.getByTestId("match-over")).toContainText("Match Noor (walkover, Elsbeth absent)");
    await page.screenshot({ path: `${PICTURES}endings-walkover.png` });
    await allSent(page);
    expect((await viewOf(day, 1)).score).toMatchObject({ over: true, status: "walkover", winner: "A" });

    await page.getByRole("button", { name: "It is not over: take the end back" }).click();
    await confirm(page);
    await chooseInMore(page, "Put right", HAPPENED);
    await press(page, "The match ends here", "Not played");
    await confirm(page);
    await expect(page.getByTestId("match-over")).toContainText("No winner (not played to its end)");
    await allSent(page);
    expect((await viewOf(day, 1)).score).toMatchObject({ over: true, status: "unplayed", winner: null });
  });

  test("[SC29, SC33, PD84] time is up: the event's rule is asked whole, and no walkover is offered by then", async ({
    day,
  }) => {
    const page = await startCharting(day, 2, "Ioan P.");
    await chooseInMore(page, "Level", "Score only");
    await touch(page, "AAAAA");
    await chooseInMore(page, "Put right", HAPPENED);
    await expect(page.getByRole("button", { name: /^Walkover/ })).toHaveCount(0);
    const look = page.getByRole("button", { name: "Answer all 4 to go on" });
    for (const [ask, answer] of RULE) {
      await expect(look).toBeDisabled();
      await press(page, ask, answer);
    }
    await page.screenshot({ path: `${PICTURES}endings-time-up.png` });
    await page.getByRole("button", { name: "Time was up: see what it makes" }).click();
    await expect(page.getByTestId("change-score")).toBeVisible();
    await confirm(page);
    await expect(page.getByTestId("match-over")).toContainText("Match Noor (time) 2–0");
    await allSent(page);
    expect((await viewOf(day, 2)).score).toMatchObject({ over: true, status: "timeUp", winner: "A" });
  });

  test("[PD23, PD84] two own players: whose choices are charted changes in the middle of the match", async ({
    day,
  }) => {
    const desk = await day.desk.context().newPage();
    await desk.goto(`${day.product.url}/desk`);
    await makeDay(desk, "Own day", 1);
    await addMatch(desk, { court: 1, own: OWN, opponent: "Kaito L.", format: "1 set", bothOurs: true });
    const here = { ...day, codeOf: await makeCodes(desk), ...logsOn(desk, day.product.url) };
    const page = await startCharting(here, 1, "Ioan P.");
    await chooseInMore(page, "Level", "Score only");
    await touch(page, "A");
    for (const [whose, subjects] of [
      ["Kaito", ["B"]],
      ["Noor and Kaito", ["A", "B"]],
    ] as const) {
      await chooseInMore(page, "Put right", HAPPENED);
      await press(page, "Charted from here", whose);
      await confirm(page);
      await touch(page, "B");
      await allSent(page);
      const { points } = await viewOf(here, 1);
      expect(points.at(0)?.subjects).toEqual(["A", "B"]);
      expect(points.at(-1)?.subjects).toEqual(subjects);
    }
    await page.getByRole("button", { name: "Points: mend any of them" }).click();
    const facts = page.getByRole("dialog", { name: "Points" });
    await expect(facts).toContainText("Kaito");
    await page.screenshot({ path: `${PICTURES}endings-subjects.png` });
  });
});
