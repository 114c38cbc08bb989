import type { Browser, BrowserContext, Page } from "@playwright/test";
import { makeOneCourtDay, type OneCourtDay, startCharting } from "../../e2e/fixtures/one-court-day.ts";
import { type RunningProduct, startProduct } from "../../e2e/fixtures/product.ts";
import { setUpAcademy } from "../../e2e/fixtures/set-up-day.ts";

/** The size of the phone that benches hold, in CSS pixels. */
export const PHONE = { width: 390, height: 844 } as const;

/** The product, started as a person starts it, on an empty data folder, with a day of one court. */
export interface BenchDay {
  readonly product: RunningProduct;
  readonly day: OneCourtDay;
  /** What signs a browser in as the day's director. */
  readonly directorCookies: Awaited<ReturnType<BrowserContext["cookies"]>>;
  /** Takes a phone in with the court's code and answers what the pad asks, up to the first point. */
  readonly chart: (phone: Page) => Promise<void>;
}

/** Runs `use` on a day of its own; the product ends with it, however it ends. */
export const withBenchDay = async <T>(
  browser: Browser,
  name: string,
  use: (bench: BenchDay) => Promise<T>,
): Promise<T> => {
  const product = await startProduct(`bench-${name}`);
  try {
    const desk = await browser.newContext({ viewport: { width: 1280, height: 800 } });
    const director = await desk.newPage();
    await setUpAcademy(director, product.url);
    const day = await makeOneCourtDay(director, product.url, {
      name: "Bench day",
      own: "Noor V.",
      opponent: "Elsbeth K.",
    });
    const directorCookies = await desk.cookies();
    await desk.close();
    return await use({
      product,
      day,
      directorCookies,
      chart: (phone) => startCharting(phone, product.url, day, "Ida"),
    });
  } finally {
    await product.stop();
  }
};

/** A phone with touch. `serviceWorkers: "block"` keeps what is loaded in the page's own requests. */
export const openPhone = (browser: Browser, serviceWorkers: "allow" | "block"): Promise<BrowserContext> =>
  browser.newContext({ viewport: PHONE, hasTouch: true, serviceWorkers });
