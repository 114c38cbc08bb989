import { otherSide, type Side } from "@courtloom/core";
import { foldLog, type LoggedEntry } from "@courtloom/match-log";
import { expect, type Page } from "@playwright/test";
import { chartPoint, drawStroke, enterCourt, serverOn } from "../fixtures/chart-court.ts";
import { findSmallTargets } from "../fixtures/find-small-targets.ts";
import { findViolations } from "../fixtures/find-violations.ts";
import { picturePath } from "../fixtures/look-at.ts";
import { findLowContrast } from "./find-low-contrast.ts";
import { allSent, answerStart, chooseInMore, OWN, PHONE, startCharting, test } from "./pad-day.ts";

const press = (page: Page, name: string | RegExp) =>
  page.getByRole("button", { name, ...(typeof name === "string" ? { exact: true } : {}) }).click();
const chips = (page: Page) => page.getByRole("list", { name: "Balls of this point" }).getByRole("button");
const points = (page: Page, side: Side) => page.getByTestId(`score-${side}`).getByTestId("points");
const games = (page: Page, side: Side) => page.getByTestId(`score-${side}`).getByTestId("games");

/** Cross-court, down the line, cross-court, as each striker sees it; the receiver begins. */
const RALLY = [
  { from: { x: 3, y: -12.4 }, to: { x: -2.8, y: 9.2 } },
  { from: { x: -3, y: -12.4 }, to: { x: -2.8, y: 9.2 } },
  { from: { x: 3, y: -12.4 }, to: { x: -2.6, y: 8.6 } },
];

const drawRally = async (page: Page, balls = RALLY.length): Promise<void> => {
  let striker = otherSide(await serverOn(page));
  for (const [i, path] of RALLY.slice(0, balls).entries()) {
    await drawStroke(page, path, striker);
    await expect(page.getByTestId(`chip-${i}`)).toBeVisible();
    striker = otherSide(striker);
  }
};

const BOUNCE_MS = 400;

/** A touch that counts at score only: later than a finger bounces. Says what the score is then. */
const touchPoint = async (page: Page, side: Side, says: string): Promise<void> => {
  await page.getByTestId(`point-${side}`).click();
  // Read after the touch: on a busy machine it lands late, and the pad counts from when it landed.
  const since = await page.evaluate(() => performance.now());
  await expect(page.getByTestId("score")).toContainText(says);
  await page.waitForFunction((until) => performance.now() > until, since + BOUNCE_MS + 100);
};

/** Points that stand, each once; nothing was set aside. */
const standing = (log: readonly LoggedEntry[]): number => {
  expect(new Set(log.map(({ entry }) => entry.id)).size).toBe(log.length);
  const folded = foldLog(log);
  if (!folded.ok) throw new Error(folded.error);
  expect(folded.value.setAside).toEqual([]);
  return folded.value.points.length;
};

test.describe("the pad", () => {
  test("[PD19, PD18, PD16, PD15] a link's code asks the name; a wrong one says so and is asked for", async ({
    day,
  }) => {
    const page = await day.newPhone();
    await page.goto(`${day.product.url}/pad#code=ZZZ999`);
    await expect(page.getByTestId("linked-code")).toContainText("ZZZ 999");
    expect(page.url()).not.toContain("ZZZ999");
    await expect(page.getByLabel("Court code")).toHaveCount(0);
    await page.getByLabel("Your name").fill("Ioan P.");
    await press(page, "Open the court");
    await expect(page.getByTestId("enter-problem")).toHaveText(
      "This code is not known today. Check it letter by letter, or ask the desk.",
    );
    await expect(page.getByLabel("Court code")).toHaveValue("ZZZ999");

    await page.goto(`${day.product.url}/pad#code=${await day.codeOf(1)}`);
    await page.getByLabel("Your name").fill("Ioan P.");
    await press(page, "Open the court");
    await expect(page.getByTestId("start")).toBeDisabled();
    for (const question of ["Who serves first?", "Who is at the near or left end?"]) {
      const pressed = page.getByRole("group", { name: question }).locator('[aria-pressed="true"]');
      await expect(pressed).toHaveCount(0);
    }
    await page.screenshot({ path: picturePath("pad-start") });
    await answerStart(page, OWN);
    await expect(page.getByTestId("court-name")).toHaveText("Court 1");
    await expect(page.getByTestId("chartist")).toHaveText("Ioan P.");
    await expect(page.getByTestId("level")).toHaveText("Key balls");
    await allSent(page);
    await expect(page.getByTestId("score-A")).toContainText(`${OWN}serves right`);
    await expect(page.getByTestId("end-first")).toHaveText("Noor");
    await expect(page.getByTestId("end-second")).toHaveText("Elsbeth");
  });

  test("[PD1, PD8, PD17] score only: a touch a point, ends change by themselves, undo goes back across games", async ({
    day,
  }) => {
    const page = await startCharting(day, 2, "Dana H.");
    await chooseInMore(page, "Level", "Score only");
    for (const says of ["15", "30", "40", "1"]) await touchPoint(page, "A", says);
    await expect(page.getByTestId("strip")).toContainText("Noor is now far; the court has turned.");
    await expect(page.getByTestId("strip")).toContainText("no sit-down");
    await page.getByTestId("undo").click();
    await expect(page.getByTestId("strip")).toContainText("Taken back: point Noor.");
    await expect(points(page, "A")).toHaveText("40");
    await expect(games(page, "A")).toHaveText("0");
    await page.getByTestId("undo").click();
    await expect(points(page, "A")).toHaveText("30");
    await touchPoint(page, "A", "40");
    for (let game = 0; game < 3; game += 1) {
      const left = game === 0 ? 1 : 4;
      for (let i = 0; i < left; i += 1) await touchPoint(page, "A", "");
    }
    await expect(games(page, "A")).toHaveText("3");
    await expect(page.getByTestId("strip")).toContainText(/Change of ends\..*1:\d\d left/);
    await page.screenshot({ path: picturePath("pad-score-only") });
    await allSent(page);
    expect(standing(await day.logOf(2))).toBe(12);
  });

  test("[PD4, PD5, PD9, PD12] every ball: mended chips, let, replayed point, ends swapped, and all of it undone", async ({
    day,
  }) => {
    const page = await startCharting(day, 3, "Ioan P.");
    await press(page, "Fault");
    await press(page, "Let");
    await expect(page.getByRole("button", { name: "Let (1)" })).toBeVisible();
    await press(page, "Second in");
    await drawRally(page);
    await page.getByTestId("chip-1").click();
    await page.getByLabel("Kind of shot").selectOption("Volley");
    await press(page, "Redraw");
    await drawStroke(page, { from: { x: -3, y: -12.4 }, to: { x: 2.8, y: 9.2 } }, "A");
    await expect(page.getByTestId("chip-1")).toHaveAccessibleName(/Noor, cross/i);
    await page.getByTestId("chip-2").click();
    await press(page, "Remove");
    await expect(chips(page)).toHaveCount(3);
    await press(page, "Winner");
    await expect(page.getByTestId("done")).toContainText(/15.?0/);
    await page.getByTestId("done").click();
    await expect(points(page, "A")).toHaveText("15");

    await drawRally(page, 1);
    await chooseInMore(page, "Put right", "Replay the point: nothing of it counts");
    await expect(page.getByTestId("strip")).toContainText("Point replayed.");
    await expect(chips(page)).toHaveCount(0);
    await expect(points(page, "A")).toHaveText("15");

    await chooseInMore(page, "Swap ends", "From this point");
    await expect(page.getByTestId("end-first")).toHaveText("Pell");
    for (const back of ["Taken back: ends.", "Taken back: replayed point.", "Taken back: point Noor."]) {
      await page.getByTestId("undo").click();
      await expect(page.getByTestId("strip")).toContainText(back);
    }
    await expect(page.getByTestId("end-first")).toHaveText("Noor");
    await expect(chips(page)).toHaveCount(3);
    await page.getByTestId("done").click();
    await expect(points(page, "A")).toHaveText("15");
    await allSent(page);
    const folded = foldLog(await day.logOf(3));
    const [point] = folded.ok ? folded.value.points : [];
    expect(point?.point.serve).toEqual({ outcome: "secondIn", faults: 1, lets: 1 });
    expect(point?.point.shots.map((shot) => [shot.striker, shot.kind, shot.result])).toEqual([
      ["B", undefined, undefined],
      ["A", "volley", "winner"],
    ]);
  });

  test("[PD2, PD12] from the side, and from another seat only when it is said who is where", async ({
    day,
  }) => {
    const page = await day.newPhone({ width: 844, height: 390 });
    await enterCourt(page, day.product.url, await day.codeOf(4), "Dana H.");
    await press(page, "At the side");
    await expect(page.getByText("Who is on the left?")).toBeVisible();
    await answerStart(page, "Otto R.");
    await expect(page.getByTestId("court")).toHaveAttribute("data-end-of-a", "right");
    await press(page, "First in");
    await drawRally(page);
    await expect(page.getByTestId("chip-1")).toHaveAccessibleName(/Noor, line/i);
    await press(page, "Winner");
    await page.screenshot({ path: picturePath("pad-side") });
    await page.getByTestId("done").click();
    await expect(points(page, "B")).toHaveText("15");

    await chooseInMore(page, "Where you sit", "Behind an end");
    await page.reload();
    await expect(page.getByTestId("court")).toHaveAttribute("data-end-of-a", "right");
    await chooseInMore(page, "Where you sit", "Behind an end");
    await page
      .getByRole("group", { name: "Who is at the near or left end?" })
      .getByRole("button", { name: OWN })
      .click();
    await page.getByTestId("start").click();
    await expect(page.getByTestId("court")).toHaveAttribute("data-end-of-a", "near");
  });

  test("[PD20, SY16] offline for several points, reloaded in the middle of one: nothing is lost or doubled", async ({
    day,
  }) => {
    const page = await startCharting(day, 5, "Ioan P.");
    await allSent(page);
    await page.context().setOffline(true);
    for (const line of ["first D>L C>R C>R", "ace", "first D>L D>R"]) await chartPoint(page, line);
    await expect(page.getByTestId("unsent")).toHaveText("3 unsent");
    await expect(page.getByTestId("notice-noSignal")).toHaveText(
      "No signal. Everything is on this phone. Keep charting.",
    );
    await press(page, "Fault");
    await press(page, "Second in");
    await drawRally(page, 2);
    await page.context().setOffline(false);
    await page.reload();
    await expect(chips(page)).toHaveCount(3);
    await allSent(page);
    await page.getByTestId("undo").click();
    await expect(chips(page)).toHaveCount(2);
    await drawStroke(page, RALLY[1] ?? { from: { x: 0, y: 0 }, to: { x: 0, y: 0 } }, "A");
    await press(page, "Winner");
    await page.getByTestId("done").click();
    await expect(page.getByTestId("done")).toContainText("when it is said who won");
    await allSent(page);
    const before = await page.getByTestId("score").textContent();
    await page.reload();
    await expect(page.getByTestId("score")).toHaveText(before ?? "");
    await expect(chips(page)).toHaveCount(0);
    expect(standing(await day.logOf(5))).toBe(4);
  });

  test("[PD18, SY9] a code taken back while charting: all stays here, and a new code sends it", async ({
    day,
  }) => {
    const page = await startCharting(day, 6, "Dana H.");
    await chartPoint(page, "ace");
    await allSent(page);
    const desk = day.desk.getByRole("region", { name: "Court 6" });
    const old = await day.codeOf(6);
    await desk.getByRole("button", { name: /Take the code back/ }).click();
    const notice = page.getByTestId("notice-refused");
    await expect(notice).toContainText("All is on this phone.");
    await chartPoint(page, "ace");
    await expect(page.getByTestId("unsent")).toHaveText("1 unsent");
    await page.screenshot({ path: picturePath("pad-refused") });
    await day.desk.getByRole("button", { name: "Make the codes that are missing" }).click();
    await expect.poll(() => day.codeOf(6)).not.toBe(old);
    await notice.getByRole("button", { name: "Enter code" }).click();
    await expect(page.getByTestId("enter-unsent")).toContainText("1 unsent on this phone.");
    await page.getByLabel("Court code").fill(await day.codeOf(6));
    await press(page, "Open the court");
    await allSent(page);
    await expect(points(page, "A")).toHaveText("30");
    expect(standing(await day.logOf(6))).toBe(2);
  });

  test("[LV31, WB2] a phone with an account and a code charts as one person, whichever link opened the pad", async ({
    day,
  }) => {
    const page = await day.newPhone();
    await page.context().addCookies(await day.desk.context().cookies());
    await enterCourt(page, day.product.url, await day.codeOf(7), "Rosa T.");
    await answerStart(page, OWN);
    await chartPoint(page, "ace");
    await allSent(page);
    await page.goto(`${day.product.url}/pad?match=${await day.matchOf(7)}`);
    await expect(page.getByTestId("chartist")).toHaveText("Rosa T.");
    await chartPoint(page, "ace");
    await allSent(page);
    const log = await day.logOf(7);
    expect(standing(log)).toBe(2);
    expect(new Set(log.slice(1).map(({ laneId }) => laneId)).size).toBe(1);
  });

  test("[PD10, PD13, PD15, PD21] reads in every theme and size, in sun at 7 to 1, by finger and by keyboard", async ({
    day,
  }) => {
    const page = await day.newPhone();
    // As it is on a club's own network.
    await page.addInitScript(() => Object.defineProperty(window, "isSecureContext", { value: false }));
    await enterCourt(page, day.product.url, await day.codeOf(8), "Ioan P.");
    await expect(page.getByTestId("notice-plainHttp")).toContainText("Keep it open.");
    await press(page, "OK");
    await page.reload();
    await expect(page.getByTestId("start")).toBeVisible();
    await expect(page.getByTestId("notice-plainHttp")).toHaveCount(0);
    await answerStart(page, OWN);
    await chartPoint(page, "first C>R C>L D>R");

    const moments: readonly [string, () => Promise<void>][] = [
      ["before", async () => undefined],
      ["mid", () => press(page, "First in").then(() => drawRally(page, 2))],
      ["ended", () => press(page, "Winner")],
    ];
    for (const [moment, reach] of moments) {
      await reach();
      for (const [theme, size] of LOOKS) {
        await page.setViewportSize(size);
        await chooseInMore(page, "Screen", theme);
        await press(page, "Back to the court");
        const name = `pad-${moment}-${theme.toLowerCase()}-${size.width}`;
        await page.screenshot({ path: picturePath(name) });
        const faults = theme === "Sun" ? await findLowContrast(page, 7) : [];
        expect.soft([...faults, ...(await findSmallTargets(page))], name).toEqual([]);
        if (size === PHONE) expect.soft(await findViolations(page), name).toEqual([]);
      }
    }
    await page.getByTestId("more").click();
    expect.soft(await findLowContrast(page, 7), "More").toEqual([]);
    await page.keyboard.press("Escape");
    await expect(page.getByRole("dialog")).toHaveCount(0);

    await page.setViewportSize(PHONE);
    await byKeyboard(page);
  });
});

const LOOKS = [
  ["Light", PHONE],
  ["Dark", PHONE],
  ["Light", { width: 360, height: 640 }],
  ["Dark", { width: 844, height: 390 }],
  ["Light", { width: 820, height: 1180 }],
  ["Sun", { width: 844, height: 390 }],
  ["Sun", PHONE],
] as const;

/** Tabs until the named button is reached, as somebody without a pointer does, and presses it. */
const pressByKeyboard = async (page: Page, name: string | RegExp): Promise<void> => {
  const button = page.getByRole("button", { name }).first();
  for (let i = 0; i < 40; i += 1) {
    if (await button.evaluate((each) => each === document.activeElement)) return page.keyboard.press("Enter");
    await page.keyboard.press("Tab");
  }
  throw new Error(`Tab never reaches ${name}`);
};

/** From a drawn point with its ending said: done, undone, served, taken to score only and charted. */
const byKeyboard = async (page: Page): Promise<void> => {
  await pressByKeyboard(page, /^Done/);
  await expect(page.getByTestId("done")).toContainText("when it is said who won");
  await pressByKeyboard(page, "Undo");
  await expect(page.getByTestId("chip-1")).toBeVisible();
  await pressByKeyboard(page, /^Ball 2/);
  await pressByKeyboard(page, "Remove");
  await expect(page.getByTestId("chip-1")).toHaveCount(0);
  for (let back = 0; back < 2; back += 1) await pressByKeyboard(page, "Undo");
  await expect(page.getByRole("group", { name: "First serve" })).toBeVisible();
  await pressByKeyboard(page, "Ace");
  await pressByKeyboard(page, /^Done/);
  await pressByKeyboard(page, "More");
  await pressByKeyboard(page, "Score only");
  await pressByKeyboard(page, /^Point Noor/);
  await allSent(page);
};
