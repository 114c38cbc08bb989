import { foldLog, type LoggedEntry } from "@courtloom/match-log";
import { type BrowserContext, expect, type Page, test } from "@playwright/test";
import { chartPoint, drawPoint, enterCourt, rememberLevel } from "../fixtures/chart-court.ts";
import { findSmallTargets } from "../fixtures/find-small-targets.ts";
import { findViolations } from "../fixtures/find-violations.ts";
import { picturePath } from "../fixtures/look-at.ts";
import { type RunningProduct, startProduct } from "../fixtures/product.ts";
import { addMatch, makeCodes, makeDay, setUpAcademy } from "../fixtures/set-up-day.ts";
import { findLowContrast } from "../pad/find-low-contrast.ts";

const PHONE = { width: 390, height: 844 };
const SMALL = { width: 360, height: 640 };
const OWN = "Noor V.";
const FIRST = "Dana H.";
const SECOND = "Ioan P.";
const THIRD = "Pell O.";

const readLog = async (page: Page, url: string, matchId: string): Promise<LoggedEntry[]> => {
  const input = encodeURIComponent(JSON.stringify({ matchId, after: 0, limit: 500 }));
  const answer = await page.request.get(`${url}/api/trpc/match.log?input=${input}`);
  expect(answer.status()).toBe(200);
  return ((await answer.json()) as { result: { data: { entries: LoggedEntry[] } } }).result.data.entries;
};

const start = async (page: Page, asksServer: boolean): Promise<void> => {
  const ends = "Who is at the near or left end?";
  for (const question of asksServer ? ["Who serves first?", ends] : [ends]) {
    await page.getByRole("group", { name: question }).getByRole("button", { name: OWN }).click();
  }
  await page.getByTestId("start").click();
};

const press = (page: Page, name: string): Promise<void> =>
  page.getByRole("button", { name, exact: true }).click();

const openSheet = async (page: Page): Promise<void> => {
  await page.getByTestId("more").click();
  await press(page, "Hand over");
  await expect(page.getByRole("dialog", { name: "Hand over" })).toBeVisible();
};

/** The code as it is read out, and the link behind the drawing. */
const handOver = async (page: Page): Promise<{ readonly code: string; readonly link: string }> => {
  await openSheet(page);
  const code = page.getByTestId("hand-over-code");
  await expect(code).toHaveText(/^[2-9A-Z]{3} [2-9A-Z]{3}$/);
  await expect(page.getByTestId("hand-over-unsent")).toHaveText("All sent.");
  await expect(page.getByTestId("hand-over-left")).toHaveText("10 min left");
  const link = (await page.getByTestId("hand-over-qr").getAttribute("data-link")) ?? "";
  return { code: (await code.textContent()) ?? "", link };
};

const enter = async (page: Page, code: string, name: string): Promise<void> => {
  await page.getByLabel("Court code").fill(code);
  await page.getByLabel("Your name").fill(name);
  await press(page, "Open the court");
};

/** The screen as it stands, on two phones, in light and in the sun. */
const lookAround = async (page: Page, name: string): Promise<void> => {
  for (const theme of ["light", "sun"] as const) {
    const before = await page.evaluate((wanted) => {
      const was = document.documentElement.dataset.theme;
      document.documentElement.dataset.theme = wanted;
      return was;
    }, theme);
    for (const size of [SMALL, PHONE]) {
      await page.setViewportSize(size);
      await page.screenshot({ path: picturePath(`${name}-${theme}-${size.width}`) });
      const faint = theme === "sun" ? await findLowContrast(page, 7) : [];
      expect
        .soft([...faint, ...(await findSmallTargets(page))], `${name} ${theme} ${size.width}`)
        .toEqual([]);
    }
    expect.soft(await findViolations(page), `${name} ${theme}`).toEqual([]);
    await page.evaluate((was) => {
      document.documentElement.dataset.theme = was ?? "light";
    }, before);
  }
};

test.describe("handing a match over", () => {
  let product: RunningProduct;
  let director: Page;
  let courtCode: string;
  let matchIds: readonly [string, string];
  const contexts: BrowserContext[] = [];
  let open: (viewport?: { readonly width: number; readonly height: number }) => Promise<Page>;

  test.beforeAll(async ({ browser }) => {
    test.setTimeout(600_000);
    product = await startProduct("hand-over");
    open = async (viewport = PHONE) => {
      const context = await browser.newContext({ viewport });
      contexts.push(context);
      return context.newPage();
    };
    director = await open({ width: 1280, height: 800 });
    await setUpAcademy(director, product.url);
    await makeDay(director, "Saturday match play", 2);
    for (const [at, opponent] of ["Visitor red", "Visitor blue"].entries()) {
      const format = "2 short sets to 4, match tie-break to 10";
      await addMatch(director, { court: at + 1, own: OWN, opponent, format });
    }
    courtCode = await (await makeCodes(director))(1);
    await director.reload();
    const matchOf = async (court: number): Promise<string> => {
      const pad = director.getByRole("region", { name: `Court ${court}` }).locator('a[href*="/pad?match="]');
      const { searchParams } = new URL((await pad.getAttribute("href")) ?? "", product.url);
      return searchParams.get("match") ?? "";
    };
    matchIds = [await matchOf(1), await matchOf(2)];
  });

  test.afterAll(async () => {
    for (const context of contexts) await context.close();
    await product?.stop();
  });

  test("[PD55, PD58, PD60, PD61, LV34] goes on mid-game on another phone, by code and back by link; no point is lost or doubled", async () => {
    test.setTimeout(300_000);
    const dana = await open();
    await enterCourt(dana, product.url, courtCode, FIRST);
    await start(dana, true);
    for (const line of ["ace", "first D>Lnet"]) await chartPoint(dana, line);

    // A half-charted point is finished or undone before anything is handed over.
    const ending = await drawPoint(dana, "first D>Lnet");
    await openSheet(dana);
    await expect(dana.getByRole("dialog", { name: "Hand over" })).toContainText(
      "Finish or undo this point first",
    );
    await lookAround(dana, "hand-over-half");
    await press(dana, "Back to the court");
    await ending();
    await dana.getByTestId("done").click();
    await expect(dana.getByTestId("unsent")).toHaveText(/All sent/);
    const { code } = await handOver(dana);
    await lookAround(dana, "hand-over-code");

    const ioan = await open();
    await ioan.goto(`${product.url}/pad`);
    await lookAround(ioan, "hand-over-enter");
    await enter(ioan, ` ${code.toLowerCase()} `, SECOND);
    await start(ioan, false);
    await expect(ioan.getByTestId("pad")).toHaveAttribute("data-level", "every");
    for (const phone of [dana, ioan]) {
      await expect(phone.getByTestId("score-A").getByTestId("points")).toHaveText("40");
      await expect(phone.getByTestId("score-B").getByTestId("points")).toHaveText("0");
    }
    const handed = dana.getByTestId("lead-taken");
    await expect(handed).toContainText(`Handed over to ${SECOND}`);
    await expect(handed).toContainText("Your points are kept.");
    await lookAround(dana, "hand-over-handed");
    for (const line of ["ace", "double"]) await chartPoint(ioan, line);
    await expect(dana.getByTestId("score-A").getByTestId("games")).toHaveText("1");
    await expect(dana.getByTestId("score-A").getByTestId("points")).toHaveText("15");

    const pell = await open();
    await pell.goto(`${product.url}/pad`);
    await enter(pell, code, THIRD);
    await expect(pell.getByTestId("enter-problem")).toContainText("This hand-over code was used");
    await lookAround(pell, "hand-over-used");

    const { link } = await handOver(ioan);
    expect(link).toMatch(new RegExp(`^${product.url}/pad#code=[2-9A-Z]{6}$`));
    await dana.goto(link);
    await expect(dana.getByTestId("linked-code")).toBeVisible();
    expect(new URL(dana.url()).hash).toBe("");
    await expect(dana.getByLabel("Your name")).toHaveValue(FIRST);
    await press(dana, "Open the court");
    await start(dana, false);
    await expect(ioan.getByTestId("lead-taken")).toContainText(`Handed over to ${FIRST}`);
    await chartPoint(dana, "ace");
    await expect(dana.getByTestId("unsent")).toHaveText(/All sent/);
    await agrees();
  });

  /** Six points of three leads, each once and in order, with both names. */
  const agrees = async (): Promise<void> => {
    const [matchId] = matchIds;
    const log = await readLog(director, product.url, matchId);
    expect(log.map(({ pos }) => pos)).toEqual(log.map((_, i) => i + 1));
    expect(new Set(log.map(({ entry }) => entry.id)).size).toBe(log.length);
    const points = log.filter(({ entry }) => entry.body.kind === "PointCharted");
    expect(points.map(({ epoch }) => epoch)).toEqual([1, 1, 1, 2, 2, 3]);
    const view = foldLog(log);
    expect(view.ok && view.value.setAside).toEqual([]);
    await director.goto(`${product.url}/court/${matchId}`);
    for (const { pos, epoch } of points) {
      await expect(director.getByTestId(`entry-${pos}`)).toContainText(epoch === 2 ? SECOND : FIRST);
    }
    const lines = director.getByTestId("log").getByRole("listitem");
    await expect(lines.filter({ hasText: "Took over" })).toHaveCount(2);
    await expect(lines.filter({ hasText: "Took over" }).filter({ hasText: SECOND })).toHaveCount(1);
    await director.screenshot({ path: picturePath("hand-over-court"), fullPage: true });
  };

  test("[PD56, PD57, PD59] says what to do without signal, withdraws, and lets staff hand over", async () => {
    test.setTimeout(300_000);
    await rememberLevel(director, "every");
    await director.goto(`${product.url}/pad?match=${matchIds[1]}`);
    await start(director, true);
    await chartPoint(director, "ace");
    const { code } = await handOver(director);
    await press(director, "Withdraw the code");
    await expect(director.getByRole("dialog")).toHaveCount(0);
    const pell = await open();
    await pell.goto(`${product.url}/pad`);
    await enter(pell, code, THIRD);
    await expect(pell.getByTestId("enter-problem")).toContainText("This hand-over code has ended");

    await director.context().setOffline(true);
    await expect(director.getByTestId("pad")).toHaveAttribute("data-signal", "noSignal", { timeout: 60_000 });
    await openSheet(director);
    await expect(director.getByRole("dialog", { name: "Hand over" })).toContainText("A code needs signal");
    await lookAround(director, "hand-over-no-signal");
    await director.context().setOffline(false);
    const again = director.getByTestId("hand-over-code");
    await expect(again).toBeVisible({ timeout: 60_000 });
    await enter(pell, (await again.textContent()) ?? "", THIRD);
    await start(pell, false);
    await expect(director.getByTestId("lead-taken")).toContainText(`Handed over to ${THIRD}`);
    await pell.reload();
    await expect(pell.getByTestId("chartist")).toHaveText(THIRD);
    await expect(pell.getByTestId("court")).toBeVisible();
  });
});
