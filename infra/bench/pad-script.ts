import type { Browser } from "@playwright/test";
import { openPhone, withBenchDay } from "./bench-day.ts";
import { judge } from "./judge.ts";
import { openBrowser } from "./open-browser.ts";
import type { Bench } from "./outcome.ts";
import { serveEmptyPage } from "./serve-empty-page.ts";
import { type LoadedScripts, watchScripts } from "./watch-scripts.ts";

const BAR = 1.6;

interface PadScripts {
  readonly atTheCode: LoadedScripts;
  readonly charting: LoadedScripts;
}

/** A first visit with nothing stored: up to the question for a code, then up to the first point. */
const padScripts = (browser: Browser): Promise<PadScripts> =>
  withBenchDay(browser, "script", async ({ product, chart }) => {
    const context = await openPhone(browser, "block");
    const phone = await context.newPage();
    const watch = await watchScripts(phone);
    await phone.goto(`${product.url}/pad`);
    await phone.getByLabel("Court code").waitFor();
    const atTheCode = await watch.count();
    await chart(phone);
    const charting = await watch.count();
    await context.close();
    return { atTheCode, charting };
  });

const emptyScripts = async (browser: Browser): Promise<LoadedScripts> => {
  const empty = await serveEmptyPage();
  try {
    const context = await openPhone(browser, "block");
    const page = await context.newPage();
    const watch = await watchScripts(page);
    await page.goto(empty.url);
    await page.getByTestId("empty").waitFor();
    const scripts = await watch.count();
    await context.close();
    return scripts;
  } finally {
    await empty.stop();
  }
};

const kilobytes = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`;
const say = ({ files, transferred, decoded }: LoadedScripts): string =>
  `${kilobytes(transferred)} sent, ${kilobytes(decoded)} decoded, ${files} files`;

/**
 * JavaScript that a first visit of the pad is sent until it charts, parts that are loaded late included, against an
 * empty page of the same framework. Bytes as sent, gzipped, decide. Spec BN4.
 */
export const benchPadScript: Bench = async () => {
  const browser = await openBrowser();
  try {
    const floor = await emptyScripts(browser);
    const { atTheCode, charting } = await padScripts(browser);
    const { ratio, verdict } = judge([{ ours: charting.transferred, floor: floor.transferred }], BAR);
    console.log("pad-script: JavaScript of the page, files and inline, without the service worker's own");
    console.log(`  empty page:       ${say(floor)}`);
    console.log(`  pad, at the code: ${say(atTheCode)}`);
    console.log(`  pad, charting:    ${say(charting)}`);
    const decoded = (charting.decoded / floor.decoded).toFixed(2);
    console.log(
      `  ratio of bytes sent ${ratio.toFixed(2)} (bar ${BAR}) ${verdict === "kept" ? "kept" : "MISSED"}; decoded ${decoded}`,
    );
    return [{ name: "pad-script", verdict }];
  } finally {
    await browser.close();
  }
};
