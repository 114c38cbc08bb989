import { mkdirSync } from "node:fs";
import type { Side } from "@courtloom/core";
import { figuresOf } from "@courtloom/decisions";
import { foldLog, type LoggedEntry, type MatchView } from "@courtloom/match-log";
import { applyScore, describePoints, describeSets, type ScoreState, startScore } from "@courtloom/tennis";
import { type BrowserContext, expect, type Page, test } from "@playwright/test";
import { chartPoint, enterCourt } from "../fixtures/chart-court.ts";
import { processIds, type RunningProduct, startProduct } from "../fixtures/product.ts";
import { addMatch, makeCodes, makeDay, setUpAcademy } from "../fixtures/set-up-day.ts";
import type { ScriptPoint } from "./point-script.ts";
import { COURT_1_POINTS, COURT_2_POINTS } from "./points.ts";

const PICTURES = new URL("../../.tmp/e2e/pictures/", import.meta.url).pathname;
const FORMAT = "2 short sets to 4, match tie-break to 10";
const PHONE = { width: 390, height: 844 };
/** The live server is killed when phone 1 has charted so many points. */
const KILL_AFTER = 20;

interface Court {
  readonly no: number;
  readonly own: string;
  readonly opponent: string;
  readonly chartist: string;
  readonly lines: readonly string[];
}

const COURTS: readonly [Court, Court] = [
  { no: 1, own: "Noor V.", opponent: "Visitor red", chartist: "Ioan P.", lines: COURT_1_POINTS },
  { no: 2, own: "Kaito L.", opponent: "Visitor slate", chartist: "Dana H.", lines: COURT_2_POINTS },
];

/** What the script itself says the score is, by the rules alone. */
const scriptScore = (points: readonly ScriptPoint[]): ScoreState => {
  const format = {
    sets: 3,
    gamesPerSet: 4,
    tiebreakAt: 4,
    tiebreakTo: 7,
    noAd: false,
    finalSet: { kind: "matchTiebreak", to: 10 },
  } as const;
  const board = startScore({ format, firstServer: "A" });
  if (!board.ok) throw new Error("the format is playable");
  let now = board.value;
  for (const { winner } of points) {
    const next = applyScore(now, { type: "point", winner });
    if (!next.ok) throw new Error(`the script goes on after the end: ${next.error.code}`);
    now = next.value;
  }
  return now.state;
};

/** A side's line balls as the script tells them, counted without any geometry. */
const scriptLineBalls = (points: readonly ScriptPoint[], side: Side) => {
  const own = points.flatMap((p) => p.strokes).filter((s) => s.striker === side && s.isGroundstroke);
  const line = own.filter((s) => s.isLine);
  return { tried: line.length, missed: line.filter((s) => s.miss !== undefined).length };
};

const readStoredLog = async (page: Page, url: string, matchId: string): Promise<LoggedEntry[]> => {
  const input = encodeURIComponent(JSON.stringify({ matchId, after: 0, limit: 500 }));
  const answer = await page.request.get(`${url}/api/trpc/match.log?input=${input}`);
  expect(answer.status()).toBe(200);
  return ((await answer.json()) as { result: { data: { entries: LoggedEntry[] } } }).result.data.entries;
};

const scoreText = (state: ScoreState): string => `${describeSets(state, "A")} ${describePoints(state, "A")}`;

test.describe("a day on two courts", () => {
  let product: RunningProduct;
  const contexts: BrowserContext[] = [];

  test.beforeAll(async () => {
    test.setTimeout(600_000);
    mkdirSync(PICTURES, { recursive: true });
    product = await startProduct("two-phones");
  });

  test.afterAll(async () => {
    for (const context of contexts) await context.close();
    await product?.stop();
  });

  test("[LV1, LV2, PD1] two phones chart by hand, live is killed in between, and everything agrees", async ({
    browser,
  }) => {
    test.setTimeout(900_000);
    const open = async (viewport: { width: number; height: number }): Promise<Page> => {
      const context = await browser.newContext({ viewport });
      contexts.push(context);
      return context.newPage();
    };

    const director = await open({ width: 1280, height: 800 });
    await setUpAcademy(director, product.url);
    const dayId = await makeDay(director, "Saturday match play", 2);
    for (const { no, own, opponent } of COURTS) {
      await addMatch(director, { court: no, own, opponent, format: FORMAT });
    }
    const codeOf = await makeCodes(director);
    const codes = [await codeOf(1), await codeOf(2)];

    const board = await open({ width: 1280, height: 800 });
    await board.context().addCookies(await director.context().cookies());
    await board.goto(`${product.url}/board/${dayId}`);
    await expect(board.getByTestId("tile-1")).toHaveAttribute("data-state", "waiting");

    const chart = async (court: Court, code: string, after: (done: number) => Promise<void>) => {
      const page = await open(PHONE);
      await enterCourt(page, product.url, code, court.chartist);
      for (const question of ["Who serves first?", "Who is at the near or left end?"]) {
        await page.getByRole("group", { name: question }).getByRole("button", { name: court.own }).click();
      }
      await page.getByTestId("start").click();
      const points: ScriptPoint[] = [];
      for (const line of court.lines) {
        points.push(await chartPoint(page, line));
        await after(points.length);
      }
      return { page, points };
    };
    const killOnce = async (done: number) => {
      if (done !== KILL_AFTER) return;
      await board.screenshot({ path: `${PICTURES}board-before-kill.png` });
      process.kill(processIds(product.dataDir).live ?? Number.NaN, "SIGKILL");
    };
    const charted = await Promise.all([
      chart(COURTS[0], codes[0] ?? "", killOnce),
      chart(COURTS[1], codes[1] ?? "", async () => undefined),
    ]);

    for (const [i, { page, points }] of charted.entries()) {
      const court = COURTS[i] ?? COURTS[0];
      expect(points.length).toBeGreaterThanOrEqual(40);
      await expect(page.getByTestId("unsent")).toHaveText(/All sent/, { timeout: 60_000 });
      await page.screenshot({ path: `${PICTURES}pad-court-${court.no}.png` });
      await agrees(board, court, points);
    }
    await board.screenshot({ path: `${PICTURES}board-two-courts.png` });
  });

  /** Board = court page = fold of the stored log = script, with nothing lost and nothing doubled. */
  const agrees = async (board: Page, court: Court, points: readonly ScriptPoint[]): Promise<void> => {
    const tile = board.getByTestId(`tile-${court.no}`);
    const href = (await tile.getByRole("link").first().getAttribute("href")) ?? "";
    const matchId = href.split("/").at(-1) ?? "";
    const log = await readStoredLog(board, product.url, matchId);

    expect(log.map((entry) => entry.pos)).toEqual(log.map((_, i) => i + 1));
    const chartedEntries = log.filter((entry) => entry.entry.body.kind === "PointCharted");
    expect(chartedEntries.length).toBe(points.length);
    expect(new Set(log.map((entry) => entry.entry.id)).size).toBe(log.length);

    const folded = foldLog(log);
    if (!folded.ok) throw new Error(folded.error);
    const view: MatchView = folded.value;
    const expected = scriptScore(points);
    expect(view.setAside).toEqual([]);
    expect(view.score).toEqual(expected);
    expect(view.points.map((p) => p.point.winner)).toEqual(points.map((p) => p.winner));
    expect(view.points.map((p) => p.point.shots.length)).toEqual(points.map((p) => p.strokes.length));

    const line = scriptLineBalls(points, "A");
    const figures = figuresOf(view).A;
    expect([figures?.lineMissed.x, figures?.lineMissed.n]).toEqual([line.missed, line.tried]);

    await expect(tile.getByTestId("figure")).toContainText(`${line.missed} of ${line.tried}`, {
      timeout: 30_000,
    });
    await expect(tile.getByTestId("figure")).toContainText(
      `${figures?.lineShare.x} of ${figures?.lineShare.n}`,
    );
    const games = (side: 0 | 1) => [...expected.sets.map((s) => s[side]), expected.games[side]].join(" ");
    await expect(tile.getByTestId("score")).toContainText(`${court.own} ${games(0)}`);
    await expect(tile.getByTestId("score")).toContainText(`${court.opponent} ${games(1)}`);

    const courtPage = await board.context().newPage();
    await courtPage.goto(`${product.url}${href}`);
    await expect(courtPage.getByTestId("score")).toContainText(`${court.own} ${games(0)}`);
    await expect(courtPage.getByTestId("score")).toContainText(`${court.opponent} ${games(1)}`);
    await expect(courtPage.getByTestId("figures-A").getByTestId("lineMissed")).toContainText(
      `${line.missed} of ${line.tried}`,
    );
    await expect(courtPage.getByTestId(`entry-${log.length}`)).toBeVisible();
    await courtPage.screenshot({ path: `${PICTURES}court-${court.no}.png`, fullPage: true });
    await courtPage.close();
    console.log(
      `court ${court.no}: ${points.length} points, ${log.length} entries, 0 lost, 0 doubled; ${scoreText(expected)}; line balls missed ${line.missed} of ${line.tried}`,
    );
  };
});
