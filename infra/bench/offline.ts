import type { Browser } from "@playwright/test";
import { openPhone, withBenchDay } from "./bench-day.ts";
import { judge, type Turn } from "./judge.ts";
import { serveOfflineFloor } from "./offline-floor.ts";
import { openBrowser } from "./open-browser.ts";
import { isKeptAfterVisit, openOffline } from "./open-offline.ts";
import type { Bench, Outcome } from "./outcome.ts";
import { median } from "./quantile.ts";

const REPEATS = 7;
const NAME = "offline";

/** Both pages visited once, both servers gone, then opened in turns; undefined if this build keeps no page. */
const measure = (browser: Browser): Promise<readonly Turn[] | undefined> =>
  withBenchDay(browser, NAME, async ({ product, chart }) => {
    const context = await openPhone(browser, "allow");
    const pad = `${product.url}/pad`;
    const phone = await context.newPage();
    await chart(phone);
    await phone.close();
    if (!(await isKeptAfterVisit(context, pad))) return undefined;
    const floor = await serveOfflineFloor();
    if (!(await isKeptAfterVisit(context, floor.url)))
      throw new Error("The floor's own worker did not register.");
    await floor.stop();
    await product.stop();
    const turns: Turn[] = [];
    for (let i = 0; i < REPEATS; i += 1) {
      const floorMs = await openOffline(context, floor.url);
      turns.push({ floor: floorMs, ours: await openOffline(context, pad) });
    }
    return turns;
  });

const say = (turns: readonly Turn[]): Outcome => {
  const { ratio, spread, verdict } = judge(turns, undefined);
  const all = (part: keyof Turn): string => turns.map((turn) => turn[part].toFixed(0)).join(", ");
  const middle = (part: keyof Turn): string => median(turns.map((turn) => turn[part])).toFixed(0);
  console.log("offline: opening without a server, from the beginning until the score is painted");
  console.log(`  pad: ${middle("ours")} ms (${all("ours")})`);
  console.log(
    `  least page with a worker: ${middle("floor")} ms (${all("floor")}), spread ${spread.toFixed(2)}`,
  );
  console.log(`  ratio ${ratio.toFixed(1)}, without a bar`);
  return { name: NAME, verdict };
};

/** Opening the pad with the product away, against the least page that a service worker can answer with. Spec BN6. */
export const benchOffline: Bench = async () => {
  const browser = await openBrowser();
  try {
    const turns = await measure(browser);
    if (turns) return [say(turns)];
    console.log("offline: this build has no service worker, so the pad does not open without a server");
    return [{ name: NAME, verdict: "impossible" }];
  } finally {
    await browser.close();
  }
};
