import type { LoggedEntry } from "@courtloom/match-log";
import { type Browser, type BrowserContext, test as base, expect, type Page } from "@playwright/test";
import { enterCourt } from "../fixtures/chart-court.ts";
import { type RunningProduct, startProduct } from "../fixtures/product.ts";
import { addMatch, makeCodes, makeDay, setUpAcademy } from "../fixtures/set-up-day.ts";

export const PHONE = { width: 390, height: 844 };
export const OWN = "Noor V.";
const VISITORS = ["Elsbeth K.", "Rosa T.", "Pell O.", "Otto R.", "Isolde M.", "Lene D.", "Runa S.", "Wil B."];
const COURTS = VISITORS.length;

/** A day on which each court has one match, and a desk that stays open. */
export interface PadDay {
  readonly product: RunningProduct;
  readonly desk: Page;
  /** The court's code as the desk shows it now. */
  readonly codeOf: (court: number) => Promise<string>;
  readonly newPhone: (size?: { readonly width: number; readonly height: number }) => Promise<Page>;
  /** The court's log as the server holds it. */
  readonly logOf: (court: number) => Promise<readonly LoggedEntry[]>;
  readonly matchOf: (court: number) => Promise<string>;
}

/** The matches and logs of the day that a desk shows, as the server holds them. */
export const logsOn = (desk: Page, url: string): Pick<PadDay, "matchOf" | "logOf"> => {
  const ask = async (procedure: string, input: object): Promise<unknown> => {
    const query = encodeURIComponent(JSON.stringify(input));
    const answer = await desk.request.get(`${url}/api/trpc/${procedure}?input=${query}`);
    expect(answer.status()).toBe(200);
    return ((await answer.json()) as { result: { data: unknown } }).result.data;
  };
  const matchOf = async (court: number): Promise<string> => {
    const pad = desk.getByRole("region", { name: `Court ${court}` }).locator('a[href*="/pad?match="]');
    return new URL((await pad.getAttribute("href")) ?? "", url).searchParams.get("match") ?? "";
  };
  return {
    matchOf,
    logOf: async (court) => {
      const input = { matchId: await matchOf(court), after: 0, limit: 500 };
      return ((await ask("match.log", input)) as { entries: LoggedEntry[] }).entries;
    },
  };
};

const makePadDay = async (browser: Browser, contexts: BrowserContext[], name: string): Promise<PadDay> => {
  const product = await startProduct(name);
  const open = async (size: { readonly width: number; readonly height: number }): Promise<Page> => {
    const context = await browser.newContext({ viewport: size, hasTouch: true });
    contexts.push(context);
    return context.newPage();
  };
  const desk = await open({ width: 1280, height: 800 });
  await setUpAcademy(desk, product.url);
  await makeDay(desk, "Pad day", COURTS);
  for (const [i, opponent] of VISITORS.entries()) {
    await addMatch(desk, {
      court: i + 1,
      own: OWN,
      opponent,
      format: "2 short sets to 4, match tie-break to 10",
    });
  }
  const codeOf = await makeCodes(desk);
  return {
    product,
    desk,
    codeOf,
    newPhone: (size = PHONE) => open(size),
    ...logsOn(desk, product.url),
  };
};

/** Tests that share one product, with its data in a folder of that name, and one day; each charts a court of its own. */
export const padTest = (name: string) =>
  base.extend<object, { day: PadDay }>({
    day: [
      async ({ browser }, use) => {
        const contexts: BrowserContext[] = [];
        const day = await makePadDay(browser, contexts, name);
        await use(day);
        for (const context of contexts) await context.close();
        await day.product.stop();
      },
      { scope: "worker", timeout: 600_000 },
    ],
  });

export const test = padTest("pad");

/** Who is at the near end, or the left one, when charting begins. */
export const answerStart = async (page: Page, near: string, server: string = OWN): Promise<void> => {
  await page.getByRole("group", { name: "Who serves first?" }).getByRole("button", { name: server }).click();
  await page
    .getByRole("group", { name: "Who is at the near or left end?" })
    .getByRole("button", { name: near })
    .click();
  await page.getByTestId("start").click();
  await expect(page.getByTestId("more")).toBeVisible();
};

/** A phone that charts a court, at the first point. */
export const startCharting = async (day: PadDay, court: number, name: string): Promise<Page> => {
  const page = await day.newPhone();
  await enterCourt(page, day.product.url, await day.codeOf(court), name);
  await answerStart(page, OWN);
  return page;
};

/** Opens More, presses a button in one of its groups. */
export const chooseInMore = async (page: Page, group: string, button: string): Promise<void> => {
  await page.getByTestId("more").click();
  await page.getByRole("group", { name: group }).getByRole("button", { name: button, exact: true }).click();
};

export const allSent = (page: Page): Promise<void> =>
  expect(page.getByTestId("unsent")).toHaveText("All sent", { timeout: 30_000 });
