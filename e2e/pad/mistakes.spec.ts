import type { Side } from "@courtloom/core";
import { figuresOf } from "@courtloom/decisions";
import {
  type EntryBody,
  type Fact,
  foldLog,
  type LoggedEntry,
  type MatchView,
  type Point,
  type Shot,
} from "@courtloom/match-log";
import { seenFrom } from "@courtloom/tennis";
import { expect, type Page } from "@playwright/test";
import { drawStroke } from "../fixtures/chart-court.ts";
import { findSmallTargets } from "../fixtures/find-small-targets.ts";
import { findFaintText, findViolations } from "../fixtures/find-violations.ts";
import { allSent, chooseInMore, type PadDay, padTest, startCharting } from "./pad-day.ts";

const PICTURES = new URL("../../.tmp/e2e/pictures/", import.meta.url).pathname;
const test = padTest("mistakes");
const NOOR = "Noor";
const BOUNCE_MS = 400;

/** A match on a phone beside the match as it would have been charted right. */
interface Beside {
  readonly page: Page;
  readonly court: number;
  readonly other: string;
  right: EntryBody[];
  told: number;
}

const fold = (log: readonly LoggedEntry[]): MatchView => {
  const view = foldLog(log);
  if (!view.ok) throw new Error(view.error);
  return view.value;
};

const point = (winner: Side): EntryBody => ({
  kind: "PointCharted",
  point: { winner, level: "score", seat: "behind", endOfA: "near", shots: [] },
});

/** The opening as the server has it, then what should have been charted. */
const rightView = (opening: LoggedEntry, bodies: readonly EntryBody[]): MatchView =>
  fold([
    opening,
    ...bodies.map((body, i) => ({
      pos: i + 2,
      laneId: "right",
      epoch: 1,
      entry: { v: 1, id: `right-${i}`, n: i + 1, atMs: 0, wallMs: 0, body } as const,
    })),
  ]);

const counts = (view: MatchView) => {
  const { A, B } = figuresOf(view);
  return [A, B].map((each) => each && Object.entries(each).map(([name, { x, n }]) => [name, x, n]));
};

/** The stored log folds to the score and the figures of the match charted right. */
const agrees = async (day: PadDay, match: Beside, mistake: string): Promise<void> => {
  await allSent(match.page);
  const log = await day.logOf(match.court);
  const [opening] = log;
  if (!opening) throw new Error("the match is open");
  const due = rightView(opening, match.right);
  expect(fold(log).score, mistake).toEqual(due.score);
  expect(counts(fold(log)), mistake).toEqual(counts(due));
  expect(fold(log).setAside, mistake).toEqual([]);
  match.told += 1;
};

/** One touch for whoever won it, later than a finger bounces. */
const touch = async ({ page }: Beside, letters: string): Promise<void> => {
  for (const side of letters) {
    await page.getByTestId(`point-${side}`).click();
    // A finger's bounce counts from when the touch landed, which a busy machine delays.
    const since = await page.evaluate(() => performance.now());
    await page.waitForFunction((until) => performance.now() > until, since + BOUNCE_MS + 100);
  }
};

const won = (letters: string): EntryBody[] => [...letters].map((side) => point(side === "A" ? "A" : "B"));

/** Charts points that are right. */
const chart = async (match: Beside, letters: string): Promise<void> => {
  await touch(match, letters);
  match.right.push(...won(letters));
};

const confirm = async (page: Page): Promise<void> => {
  await expect(page.getByTestId("change-score")).toBeVisible();
  await page.getByRole("button", { name: "Confirm", exact: true }).click();
  await expect(page.getByTestId("change")).toBeHidden();
};

const back = (page: Page) => page.getByRole("button", { name: "Back to the court" }).click();

/** Chooses what to do about the nth fact of the list, newest first, from 0; one touch from the court opens it. */
const chooseFact = async ({ page }: Beside, newest: number, button: string): Promise<void> => {
  await page.getByRole("button", { name: "Points: mend any of them" }).click();
  const row = page.getByRole("dialog", { name: "Points" }).getByRole("listitem").nth(newest);
  await row.getByRole("button").first().click();
  await row.getByRole("button", { name: button, exact: true }).click();
};

const mendPoint = async (match: Beside, newest: number, button: string): Promise<void> => {
  await chooseFact(match, newest, button);
  await confirm(match.page);
  await back(match.page);
};

const HAPPENED = "What happened: penalty, server, score, suspended, ended";

const happened = async ({ page }: Beside, group: string, button: string): Promise<void> => {
  await chooseInMore(page, "Put right", HAPPENED);
  await page.getByRole("group", { name: group }).getByRole("button", { name: button, exact: true }).click();
  await confirm(page);
};

const state = async (
  { page }: Beside,
  fields: Readonly<Record<string, string>>,
  button: string,
): Promise<void> => {
  await chooseInMore(page, "Put right", HAPPENED);
  for (const [label, text] of Object.entries(fields))
    await page.getByLabel(label, { exact: true }).fill(text);
  await page.getByRole("button", { name: button, exact: true }).click();
  await confirm(page);
};

const press = (page: Page, name: string) => page.getByRole("button", { name, exact: true }).click();

/** Noor's ball down the line from the left, and the same one cross-court. */
const LINE = { from: { x: -3, y: -12.4 }, to: { x: -2.8, y: 9.2 } };
const CROSS = { from: { x: -3, y: -12.4 }, to: { x: 2.8, y: 9.2 } };

const LOOKS = [
  ["Light", { width: 390, height: 844 }],
  ["Sun", { width: 390, height: 844 }],
  ["Sun", { width: 360, height: 640 }],
  ["Light", { width: 360, height: 640 }],
] as const;

/** Both sheets as they open: nothing for axe to find, everything large enough, closed by Escape. */
const lookAt = async (page: Page, look: string): Promise<void> => {
  for (const [sheet, name] of [
    ["Points: mend any of them", "Points"],
    [HAPPENED, "What happened"],
  ] as const) {
    await chooseInMore(page, "Put right", sheet);
    const dialog = page.getByRole("dialog", { name });
    await expect(dialog.getByRole("heading", { name, level: 2 })).toBeVisible();
    if (name === "Points") await dialog.locator("li button").first().click();
    await page.screenshot({
      path: `${PICTURES}mistakes-${name.toLowerCase().replace(" ", "-")}-${look}.png`,
    });
    expect(await findViolations(page)).toEqual([]);
    expect(await findSmallTargets(page)).toEqual([]);
    expect(look.startsWith("sun") ? await findFaintText(page) : []).toEqual([]);
    await page.keyboard.press("Escape");
    await expect(dialog).toBeHidden();
  }
};

const begin = async (day: PadDay, court: number, other: string): Promise<Beside> => {
  const page = await startCharting(day, court, "Ioan P.");
  await chooseInMore(page, "Level", "Score only");
  return { page, court, other, right: [], told: 0 };
};

const stated = (score: Extract<Fact, { kind: "ScoreStated" }>["score"], missed: boolean): EntryBody => ({
  kind: "ScoreStated",
  score,
  missed,
});

test.describe("mistakes and arguments, mended on the screen", () => {
  test.describe.configure({ timeout: 240_000 });

  test("[PD80, PD81] points: winners, lets, missed and doubled ones", async ({ day }) => {
    const match = await begin(day, 1, "Elsbeth");
    const { page } = match;
    await touch(match, "A");
    await mendPoint(match, 0, "Elsbeth won it");
    match.right.push(...won("B"));
    await agrees(day, match, "the wrong winner of the last point");
    await touch(match, "A");
    await chart(match, "B");
    await mendPoint(match, 1, "Replayed or a let: nothing counts");
    await agrees(day, match, "a let counted");
    await touch(match, "A");
    await chart(match, "A");
    await mendPoint(match, 1, "Take it out");
    await agrees(day, match, "a point counted twice");
    await chart(match, "A");
    await mendPoint(match, 0, "Point missed: Elsbeth won it");
    match.right.splice(-1, 0, ...won("B"));
    await agrees(day, match, "a point missed");
    await chart(match, "AB");
    await touch(match, "A");
    await chart(match, "ABAB");
    await mendPoint(match, 4, "Elsbeth won it");
    match.right.splice(-4, 0, ...won("B"));
    await agrees(day, match, "the wrong winner, five points back");
    await mendPoint(match, 2, "Take it out");
    await mendPoint(match, 2, "Put it back");
    await agrees(day, match, "a point taken out that did count");
    await touch(match, "B");
    await page.getByTestId("undo").click();
    await agrees(day, match, "undone");
    await chooseInMore(page, "Put right", "Replay the point: nothing of it counts");
    await agrees(day, match, "a replayed point");
    console.log(`${match.told} mistakes on points`);
  });

  test("[PD80, PD84] servers, ends and penalties", async ({ day }) => {
    const match = await begin(day, 2, "Rosa");
    const { page } = match;
    await chart(match, "AB");
    await happened(match, "Rosa should be serving", "My slip, since this game began");
    match.right.unshift({ kind: "ServerStated", to: "B", slip: "chartist" });
    await agrees(day, match, "my slip: the wrong server since the game began");
    await chart(match, "A");
    await happened(match, "Noor should be serving", "Players’ slip, points stand");
    match.right.push({ kind: "ServerStated", to: "A", slip: "players" });
    await agrees(day, match, "the players' slip, found at once");
    await chart(match, "AA");
    await chart(match, "BBBBA");
    await mendPoint(match, 4, "My slip: Noor served");
    match.right.splice(-5, 0, { kind: "ServerStated", to: "A", slip: "chartist" });
    await agrees(day, match, "my slip, found a game later");
    await happened(match, "Against Rosa", "Point penalty against Rosa");
    match.right.push({ kind: "PenaltyGiven", penalty: "point", against: "B" });
    await agrees(day, match, "a point penalty");
    await happened(match, "Against Noor", "Game penalty against Noor");
    match.right.push({ kind: "PenaltyGiven", penalty: "game", against: "A" });
    await agrees(day, match, "a game penalty");
    await happened(match, "Against Noor", "Warning against Noor");
    await agrees(day, match, "a warning");
    await happened(match, "Against Noor", "Point penalty against Noor");
    match.right.push({ kind: "PenaltyGiven", penalty: "point", against: "A" });
    await agrees(day, match, "a point penalty between games begins the next one");
    await chart(match, "A");
    await mendPoint(match, 1, "Take it out");
    match.right.splice(-2, 1);
    await agrees(day, match, "a penalty that was not given");
    await chooseInMore(page, "Swap ends", "Since the last change");
    await agrees(day, match, "ends seen wrongly for a game");
    await chooseInMore(page, "Swap ends", "From this point");
    await agrees(day, match, "ends seen wrongly from now");
    await mendPoint(match, 2, "Ends were wrong until now");
    await agrees(day, match, "ends seen wrongly since a point");
    console.log(`${match.told} mistakes on servers, ends and penalties`);
  });

  test("[PD82, PD83, PD84] scores, missed games, suspension and the end", async ({ day }) => {
    const match = await begin(day, 3, "Pell");
    const { page } = match;
    await chart(match, "AAB");
    await state(match, { "Points Noor": "1", "Points Pell": "1" }, "The score was disputed or wrong");
    match.right.push(stated({ points: [1, 1] }, false));
    await agrees(day, match, "the score disputed");
    await chooseInMore(page, "Put right", HAPPENED);
    await page.getByLabel("Games Noor", { exact: true }).fill("4");
    await page.getByRole("button", { name: "We missed points or games", exact: true }).click();
    await expect(page.getByTestId("score-problem")).toContainText("Games: write a whole number for both");
    await page.getByLabel("Games Pell", { exact: true }).fill("0");
    await page.getByRole("button", { name: "We missed points or games", exact: true }).click();
    await expect(page.getByTestId("impossible")).toContainText("finished set: put it in sets");
    await page.getByRole("button", { name: "Back", exact: true }).click();
    await expect(page.getByLabel("Games Noor", { exact: true })).toHaveValue("4");
    await back(page);
    await agrees(day, match, "an impossible score is refused and nothing is lost");
    await state(match, { "Games Noor": "2", "Games Pell": "1" }, "We missed points or games");
    match.right.push(stated({ games: [2, 1], points: [0, 0] }, true));
    await agrees(day, match, "three games missed");
    await chart(match, "AB");
    await state(match, { "Finished sets, Noor first": "4-2" }, "We missed points or games");
    match.right.push(stated({ sets: [[4, 2]], games: [0, 0], points: [0, 0] }, true));
    await agrees(day, match, "a set missed");
    await happened(match, "Play is suspended", "Rain");
    await expect(page.getByTestId("suspended")).toContainText("Play is suspended since");
    expect(await findViolations(page)).toEqual([]);
    await page.screenshot({ path: `${PICTURES}mistakes-suspended.png` });
    await page.getByRole("button", { name: "Play goes on" }).click();
    await chart(match, "B");
    await agrees(day, match, "suspended and gone on");
    await happened(match, "The match ends here", "Noor retires");
    await expect(page.getByTestId("match-over")).toBeVisible();
    await page.getByTestId("undo").click();
    await expect(page.getByTestId("point-A")).toBeVisible();
    await agrees(day, match, "retired by mistake");
    await happened(match, "The match ends here", "Pell is defaulted");
    match.right.push({ kind: "MatchEnded", how: { type: "defaulted", side: "B" } });
    await agrees(day, match, "defaulted");
    console.log(`${match.told} mistakes on scores and endings`);
  });

  test("[PD80, PD85, PD87] drawn points, mended on the court", async ({ day }) => {
    const page = await startCharting(day, 4, "Ioan P.");
    const match: Beside = { page, court: 4, other: "Otto", right: [], told: 0 };
    /** What was charted last, as the server has it. */
    const last = async (): Promise<Point> => {
      await allSent(page);
      const point = fold(await day.logOf(match.court)).points.at(-1)?.point;
      if (!point) throw new Error("no point was charted");
      return point;
    };
    const draw = async (): Promise<Point> => {
      await press(page, "First in");
      await drawStroke(page, { from: { x: 3, y: -12.4 }, to: { x: -2.8, y: 9.2 } }, "B");
      await expect(page.getByTestId("chip-0")).toBeVisible();
      await drawStroke(page, LINE, "A");
      await expect(page.getByTestId("chip-1")).toBeVisible();
      await press(page, "Winner");
      await page.getByTestId("done").click();
      await expect(page.getByTestId("chip-0")).toHaveCount(0);
      return last();
    };
    const done = async (): Promise<void> => {
      await page.getByTestId("mend-done").click();
      await confirm(page);
      await expect(page.getByTestId("mending")).toBeHidden();
    };
    const ball = (point: Point, changes: Partial<Shot>): readonly Shot[] =>
      point.shots.map((shot, i) => (i === 1 ? { ...shot, ...changes } : shot));
    const charted = (point: Point): void => {
      match.right.push({ kind: "PointCharted", point });
    };

    let point = await draw();
    await chooseFact(match, 0, "Mend its drawing");
    await expect(page.getByTestId("mending")).toHaveText("Mending 0–0 in 0–0, Noor serving");
    await expect(page.getByTestId("chip-1")).toHaveAccessibleName(/Noor, line/);
    await press(page, "Long");
    await done();
    charted({ ...point, winner: "B", shots: ball(point, { result: "missed", miss: "long" }) });
    await agrees(day, match, "the wrong ending");

    point = await draw();
    await chooseFact(match, 0, "Mend its drawing");
    await page.getByTestId("chip-1").click();
    await press(page, "Redraw");
    await drawStroke(page, CROSS, "A");
    await press(page, "Winner");
    await done();
    charted({ ...point, shots: ball(point, seenFrom(CROSS, { ...point, striker: "A" })) });
    await agrees(day, match, "a ball drawn wrongly");

    point = await draw();
    await mendPoint(match, 0, "Called out, I saw it in");
    charted({ ...point, winner: "B", shots: ball(point, { result: "missed", leftOut: "calledOut" }) });
    await agrees(day, match, "called out, the score follows");

    point = await draw();
    await mendPoint(match, 0, "Net cord decided it");
    charted({ ...point, shots: ball(point, { leftOut: "netCord" }) });
    await agrees(day, match, "the net cord");

    await press(page, "Ace");
    await page.getByTestId("done").click();
    point = await last();
    await chooseFact(match, 0, "Mend its drawing");
    await press(page, "Fault");
    await press(page, "Double fault");
    await done();
    charted({ ...point, winner: "B", serve: { outcome: "doubleFault", faults: 2 } });
    await agrees(day, match, "a double fault charted as an ace");

    point = await draw();
    await mendPoint(match, 0, "Not seen: keep who won");
    // As the pad charts what nobody saw: who won it, and nothing else, the serve neither.
    const { serve: _, ...bare } = point;
    charted({ ...bare, level: "score", shots: [] });
    await agrees(day, match, "what was not seen after all");

    point = await draw();
    await chooseFact(match, 0, "Mend its drawing");
    await page.getByTestId("chip-1").click();
    await press(page, "Otto’s ball");
    await done();
    charted({ ...point, winner: "B", shots: ball(point, { striker: "B" }) });
    await agrees(day, match, "the wrong striker");

    // Half a point on the court stays while another one is mended, and leaving that changes nothing.
    await press(page, "Fault");
    await chooseFact(match, 0, "Mend its drawing");
    await press(page, "Net");
    await page.screenshot({ path: `${PICTURES}mistakes-drawing.png` });
    expect(await findViolations(page)).toEqual([]);
    await press(page, "Leave it");
    await expect(page.getByRole("button", { name: "Second in", exact: true })).toBeVisible();
    await agrees(day, match, "left as it was");
    for (let i = 0; i < 2; i += 1) await page.getByTestId("undo").click();
    match.right.splice(-1, 1);
    charted(point);
    await agrees(day, match, "a mending taken back");
    console.log(`${match.told} mistakes on drawn points`);
  });

  test("[PD80, PD84] the sheets are whole, large enough and readable", async ({ day }) => {
    const match = await begin(day, 5, "Isolde");
    const { page } = match;
    await touch(match, "AB");
    for (const [theme, size] of LOOKS) {
      await page.setViewportSize(size);
      await chooseInMore(page, "Screen", theme);
      await press(page, "Back to the court");
      await lookAt(page, `${theme.toLowerCase()}-${size.width}`);
    }
    await page.getByRole("button", { name: "Points: mend any of them" }).click();
    await page.getByRole("dialog", { name: "Points" }).locator("li button").first().click();
    await press(page, `${NOOR} won it`);
    await expect(page.getByTestId("change-score")).toContainText("becomes");
    await page.screenshot({ path: `${PICTURES}mistakes-change-360.png` });
    await page.keyboard.press("Escape");
    await happened(match, "The match ends here", "Noor retires");
    await press(page, "It is not over: take the end back");
    await confirm(page);
    await expect(page.getByTestId("point-A")).toBeVisible();
  });
});
