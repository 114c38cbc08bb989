import { figuresOf } from "@courtloom/decisions";
import { foldLog, type LoggedEntry, type MatchView, type Shot } from "@courtloom/match-log";
import { applyScore, type ScoreBoard, startScore } from "@courtloom/tennis";
import { expect, type Page } from "@playwright/test";
import { drawStroke, serverOn, touchStruck } from "../fixtures/chart-court.ts";
import { findSmallTargets } from "../fixtures/find-small-targets.ts";
import { findViolations } from "../fixtures/find-violations.ts";
import { picturePath } from "../fixtures/look-at.ts";
import { addMatch, makeCodes, makeDay } from "../fixtures/set-up-day.ts";
import { findLowContrast } from "./find-low-contrast.ts";
import {
  readToldPoint,
  type Step,
  SUBJECT,
  stepsOf,
  type ToldPoint,
  toldLineBalls,
  toldLines,
} from "./key-balls-script.ts";
import { allSent, chooseInMore, OWN, type PadDay, PHONE, test } from "./pad-day.ts";

const VISITOR = "Elin S.";
const NAMES = { A: "Noor", B: "Elin" } as const;
const TOUCH_MS = 250;
const DRAG_MS = 400;
const BOUNCE_MS = 400;
const SMALL = { width: 360, height: 640 };

/** A day of its own with two courts: a visitor on the first, two own players on the second. */
const makeKeyDay = async (day: PadDay) => {
  const desk = await day.desk.context().newPage();
  await desk.goto(`${day.product.url}/desk`);
  await makeDay(desk, "Key balls day", 2);
  await addMatch(desk, { court: 1, own: OWN, opponent: VISITOR, format: "Best of 3 sets" });
  await addMatch(desk, { court: 2, own: OWN, opponent: "Kaito L.", format: "1 set", bothOurs: true });
  return { desk, codeOf: await makeCodes(desk) };
};

const enterNew = async (day: PadDay, code: string, name: string): Promise<Page> => {
  const page = await day.newPhone();
  await page.goto(`${day.product.url}/pad#code=${code}`);
  await page.getByLabel("Your name").fill(name);
  await page.getByRole("button", { name: "Open the court" }).click();
  for (const question of ["Who serves first?", "Who is at the near or left end?"]) {
    await page.getByRole("group", { name: question }).getByRole("button", { name: OWN }).click();
  }
  return page;
};

interface Taken {
  touches: number;
  ms: number;
}

const took = (taken: Taken, touches: number, ms = touches * TOUCH_MS): void => {
  taken.touches += touches;
  taken.ms += ms;
};

const GROUPS: Readonly<Record<string, string>> = {
  ballHeight: "The ball that Noor answered",
  ballTime: "The time that Noor had",
  cameIn: "What Noor did after it",
};

const pressed = async (page: Page, name: string): Promise<void> => {
  const sameOrCounted = /^(Sat up|Let)/.test(name) ? new RegExp(`^${name.replace(/[()]/g, "\\$&")}`) : name;
  await page.getByRole("button", { name: sameOrCounted, exact: true }).click();
};

const missed = async (page: Page, miss: "net" | "wide" | "long"): Promise<number> => {
  const understood = page.getByRole("button", { name: `Missed ${miss}`, exact: true });
  const asked = page.getByRole("button", {
    name: `${miss.slice(0, 1).toUpperCase()}${miss.slice(1)}`,
    exact: true,
  });
  await expect(understood.or(asked)).toBeVisible();
  if (!(await asked.isVisible())) return 0;
  await asked.click();
  return 1;
};

/** Does one step with the pointer and counts what it took. */
const perform = async (page: Page, step: Step, taken: Taken): Promise<void> => {
  switch (step.does) {
    case "press":
      if (step.name === "Done") await page.getByTestId("done").click();
      else await pressed(page, step.name);
      return took(taken, 1);
    case "touch":
      await touchStruck(page, step.ball.from, step.ball.striker);
      return took(taken, 1);
    case "drag":
      await drawStroke(page, step.ball, step.ball.striker);
      return took(taken, 1, DRAG_MS);
    case "kind":
      await page.getByTestId(`chip-${step.place}`).click();
      await page.getByLabel("Kind of shot").selectOption(step.name);
      if (step.closes) await page.getByTestId(`chip-${step.place}`).click();
      return took(taken, step.closes ? 4 : 3);
    case "answer":
      await page
        .getByRole("group", { name: GROUPS[step.question] ?? "" })
        .getByRole("button", { name: step.name, exact: true })
        .click();
      return took(taken, 1);
    case "miss":
      return took(taken, await missed(page, step.miss));
  }
};

/** The value that at least so many in a hundred stay at or under. */
const percentile = (values: readonly number[], inHundred: number): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil((inHundred / 100) * sorted.length) - 1)] ?? Number.NaN;
};

const median = (values: readonly number[]): number => percentile(values, 50);

/** What the script says of the score, by the rules alone. */
const scriptBoard = (points: readonly ToldPoint[]): ScoreBoard => {
  const board = startScore({
    format: {
      ...{ sets: 3, gamesPerSet: 6, tiebreakAt: 6, tiebreakTo: 7, noAd: false },
      finalSet: { kind: "same" },
    },
    firstServer: "A",
  });
  if (!board.ok) throw new Error("the format is playable");
  return points.reduce((now, { winner }) => {
    const next = applyScore(now, { type: "point", winner });
    if (!next.ok) throw new Error(`the script goes on after the end: ${next.error.code}`);
    return next.value;
  }, board.value);
};

const viewOf = (log: readonly LoggedEntry[]): MatchView => {
  const folded = foldLog(log);
  if (!folded.ok) throw new Error(folded.error);
  return folded.value;
};

const logOf = async (day: PadDay, desk: Page, court: number): Promise<readonly LoggedEntry[]> => {
  const pad = desk.getByRole("region", { name: `Court ${court}` }).locator('a[href*="/pad?match="]');
  const href = new URL((await pad.getAttribute("href")) ?? "", day.product.url);
  const input = { matchId: href.searchParams.get("match"), after: 0, limit: 500 };
  const query = encodeURIComponent(JSON.stringify(input));
  const answer = await desk.request.get(`${day.product.url}/api/trpc/match.log?input=${query}`);
  expect(answer.status()).toBe(200);
  return ((await answer.json()) as { result: { data: { entries: LoggedEntry[] } } }).result.data.entries;
};

/** The stored log is the told match: score, winners, serves, counts and answers, by labels alone. */
const agrees = (view: MatchView, points: readonly ToldPoint[]): void => {
  expect(view.setAside).toEqual([]);
  expect(view.score).toEqual(scriptBoard(points).state);
  expect(view.points.map(({ point }) => [point.winner, point.level])).toEqual(
    points.map(({ winner }) => [winner, "key"]),
  );
  expect(view.points.map(({ point }) => point.serve?.lets ?? 0)).toEqual(points.map(({ lets }) => lets));
  const told = toldLineBalls(points);
  const figures = figuresOf(view)[SUBJECT];
  expect([figures?.lineMissed.x, figures?.lineMissed.n]).toEqual([told.missed, told.tried]);
  expect([figures?.lineShare.x, figures?.lineShare.n]).toEqual([told.tried, told.groundstrokes]);
  expect(view.points.reduce((sum, { point }) => sum + (point.satUpKept ?? 0), 0)).toBe(told.satUp);
  const answers = (shot: Shot) =>
    [shot.ballHeight, shot.ballTime, shot.cameIn].filter((answer) => answer !== undefined).length;
  expect(view.points.flatMap(({ point }) => point.shots.map(answers)).reduce((a, b) => a + b, 0)).toBe(
    points.flatMap(({ balls }) => balls.map((ball) => ball.answers.length)).reduce((a, b) => a + b, 0),
  );
};

const LOOKS = [
  ["Light", SMALL],
  ["Sun", SMALL],
  ["Sun", PHONE],
  ["Dark", PHONE],
  ["Light", PHONE],
] as const;

const look = async (page: Page, moment: string): Promise<void> => {
  for (const [theme, size] of LOOKS) {
    await page.setViewportSize(size);
    await chooseInMore(page, "Screen", theme);
    await page.getByRole("button", { name: "Back to the court" }).click();
    const name = `key-balls-${moment}-${theme.toLowerCase()}-${size.width}`;
    await page.screenshot({ path: picturePath(name) });
    const faint = theme === "Sun" ? await findLowContrast(page, 7) : [];
    expect.soft([...faint, ...(await findSmallTargets(page))], name).toEqual([]);
    if (size === PHONE) expect.soft(await findViolations(page), name).toEqual([]);
  }
};

const CROSS = { from: { x: 3, y: -12.4 }, to: { x: -2.8, y: 9.2 } };
const LINE = { from: { x: 3, y: -12.4 }, to: { x: 2.8, y: 9.2 } };
const heightOfCourt = async (page: Page): Promise<number> =>
  (await page.getByTestId("court").boundingBox())?.height ?? Number.NaN;

test.describe("key balls", () => {
  let desk: Page;
  let codeOf: (court: number) => Promise<string>;

  test.beforeAll(async ({ day }) => {
    ({ desk, codeOf } = await makeKeyDay(day));
  });

  test("[PD31, PD24, PD26, D10] a told match of 120 points costs few touches, and the log is that match", async ({
    day,
  }) => {
    test.setTimeout(900_000);
    const page = await enterNew(day, await codeOf(1), "Ioan P.");
    await page.getByTestId("start").click();
    await expect(page.getByTestId("level")).toHaveText("Key balls");
    const points: ToldPoint[] = [];
    const costs: Taken[] = [];
    const lines = toldLines();
    expect(lines).toHaveLength(120);
    for (const [i, line] of lines.entries()) {
      const point = readToldPoint(line, await serverOn(page));
      const taken: Taken = { touches: 0, ms: 0 };
      for (const step of stepsOf(point, NAMES)) await perform(page, step, taken);
      points.push(point);
      costs.push(taken);
      if (point.serve === "double") expect(taken.touches - point.lets).toBeLessThanOrEqual(3);
      const isLast = i === lines.length - 1;
      await expect(isLast ? page.getByTestId("match-over") : page.getByTestId("done")).toContainText(
        isLast ? /\d/ : "when it is said who won",
      );
    }
    const touches = costs.map((cost) => cost.touches);
    const seconds = costs.map(({ ms }) => ms / 1_000);
    console.log(`touches a point: median ${median(touches)}, 95 in 100 at most ${percentile(touches, 95)}`);
    console.log(`seconds a point: median ${median(seconds)}, 95 in 100 at most ${percentile(seconds, 95)}`);
    expect(median(touches)).toBeLessThanOrEqual(6);
    expect(percentile(touches, 95)).toBeLessThanOrEqual(10);
    expect(median(seconds)).toBeLessThanOrEqual(6);
    expect(percentile(seconds, 95)).toBeLessThanOrEqual(10);
    await allSent(page);
    agrees(viewOf(await logOf(day, desk, 1)), points);
  });

  test("[PD23, PD25, PD27, PD28, PD29, PD30, PD32] two own players, questions, a reload and undo, in light and sun", async ({
    day,
  }) => {
    const page = await enterNew(day, await codeOf(2), "Dana H.");
    const whom = page.getByRole("group", { name: "Whose balls do you chart?" });
    await expect(whom.locator('[aria-pressed="true"]')).toHaveCount(0);
    await expect(page.getByTestId("start")).toBeDisabled();
    await page.screenshot({ path: picturePath("key-balls-whom") });
    await whom.getByRole("button", { name: OWN }).click();
    await page.getByTestId("start").click();
    await look(page, "before");
    await page.setViewportSize(SMALL);
    const height = await heightOfCourt(page);

    const press = (name: string | RegExp) => page.getByRole("button", { name, exact: true }).click();
    await press("First in");
    await touchStruck(page, CROSS.from, SUBJECT);
    await press("Sat up, kept");
    await press(/^Sat up, kept/);
    await press("One less sat up");
    await drawStroke(page, LINE, SUBJECT);
    await expect(page.getByTestId("sat-up")).toHaveText("1");
    await expect(page.getByTestId("chip-1")).toHaveAccessibleName(/Noor, line.*3 not answered/);
    await expect(page.getByTestId("questions")).toHaveCount(0);
    expect(await heightOfCourt(page)).toBe(height);
    await look(page, "mid");
    await press("Winner");
    await expect(page.getByTestId("questions").locator('[aria-pressed="true"]')).toHaveCount(0);
    await look(page, "asks");
    await press("Sits up");
    await page.reload();
    await expect(page.getByTestId("questions").getByRole("button", { name: "Sits up" })).toHaveAttribute(
      "aria-pressed",
      "true",
    );
    await page.getByTestId("chip-1").click();
    await look(page, "mend");
    await press("Net cord decided it");
    await page.getByTestId("chip-1").click();
    await page.getByTestId("done").click();
    await expect(page.getByTestId("score-A").getByTestId("points")).toHaveText("15");

    await page.getByTestId("undo").click();
    await expect(page.getByTestId("chip-1")).toBeVisible();
    await expect(page.getByTestId("sat-up")).toHaveText("1");
    await page.getByTestId("done").click();
    await expect(page.getByTestId("score-A").getByTestId("points")).toHaveText("15");
    // A touch right after Done is the same finger bouncing, so this one comes when that is over.
    const since = await page.evaluate(() => performance.now());
    await page.waitForFunction((until) => performance.now() > until, since + BOUNCE_MS + 100);
    await page.getByRole("button", { name: "Not seen: Kaito", exact: true }).click();
    await expect(page.getByTestId("score-B").getByTestId("points")).toHaveText("15");
    await allSent(page);

    const view = viewOf(await logOf(day, desk, 2));
    expect([view.opened.subjects, view.subjects]).toEqual([["A", "B"], ["A"]]);
    expect(view.points.map(({ point }) => [point.winner, point.level])).toEqual([
      ["A", "key"],
      ["B", "score"],
    ]);
    const shot = view.points[0]?.point.shots[1];
    expect(shot).toMatchObject({ result: "winner", ballHeight: "sitsUp", leftOut: "netCord" });
    expect(view.points[0]?.point.satUpKept).toBe(1);
    const figures = figuresOf(view);
    expect([figures.A?.lineMissed.n, figures.A?.lineShare.n, figures.B]).toEqual([0, 1, undefined]);
  });
});
