import { readFileSync } from "node:fs";
import { type BrowserContext, errors, type Page } from "@playwright/test";

const PROBE = readFileSync(new URL("in-page/shown-probe.js", import.meta.url), "utf8");
const SHOWN_WITHIN_MS = 60_000;

/** A page registers its worker some moments after it was loaded. */
const REGISTERED_WITHIN_MS = 15_000;

const REGISTERED = "navigator.serviceWorker.getRegistration().then((found) => found !== undefined)";
const KEPT =
  "navigator.serviceWorker.ready.then(() => caches.match(location.pathname)).then((kept) => kept !== undefined)";

const isRegisteredIn = async (page: Page): Promise<boolean> => {
  try {
    await page.waitForFunction(REGISTERED, undefined, { timeout: REGISTERED_WITHIN_MS });
    return true;
  } catch (error) {
    if (error instanceof errors.TimeoutError) return false;
    throw error;
  }
};

/** True once the page is kept for openings without a server; false if it registers no worker at all. */
export const isKeptAfterVisit = async (context: BrowserContext, url: string): Promise<boolean> => {
  const page = await context.newPage();
  await page.goto(url);
  const isRegistered = await isRegisteredIn(page);
  if (isRegistered) await page.waitForFunction(KEPT, undefined, { timeout: SHOWN_WITHIN_MS });
  await page.close();
  return isRegistered;
};

/** Opens `url` in a new page with the worker asleep; milliseconds from the beginning until the score is painted. */
export const openOffline = async (context: BrowserContext, url: string): Promise<number> => {
  const page = await context.newPage();
  page.setDefaultTimeout(SHOWN_WITHIN_MS);
  const protocol = await context.newCDPSession(page);
  await protocol.send("ServiceWorker.enable");
  await protocol.send("ServiceWorker.stopAllWorkers");
  await page.addInitScript({ content: PROBE });
  await page.goto(url);
  await page.getByTestId("score-A").waitFor();
  const shownMs = (await page.evaluate("shownMs")) as number;
  await page.close();
  return shownMs;
};
