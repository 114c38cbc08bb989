import { readFileSync } from "node:fs";
import type { Browser, Page } from "@playwright/test";
import { type BenchDay, openPhone } from "./bench-day.ts";
import { type Box, type DraggedPage, drawThread } from "./drag-run.ts";

/** A slow phone's processor, as a multiple of this machine's time. */
export const CPU_SLOW_DOWN = 4;

const inPage = (name: string): string => readFileSync(new URL(`in-page/${name}`, import.meta.url), "utf8");
const FLOOR_ADDRESS = "http://127.0.0.1:9/drag-floor";

const slowed = async (page: Page, box: Box): Promise<DraggedPage> => {
  const protocol = await page.context().newCDPSession(page);
  await protocol.send("Emulation.setCPUThrottlingRate", { rate: CPU_SLOW_DOWN });
  return { page, protocol, box };
};

const newProbedPage = async (browser: Browser): Promise<Page> => {
  const context = await openPhone(browser, "block");
  await context.addInitScript({ content: inPage("drag-probe.js") });
  return context.newPage();
};

const courtBox = async (page: Page): Promise<Box> => {
  const box = await page.getByTestId("court").boundingBox();
  if (!box) throw new Error("The court is not drawn.");
  return box;
};

/** The pad in the middle of a rally: three balls are drawn already, and the fourth is dragged. */
export const openDraggedPad = async (browser: Browser, { chart }: BenchDay): Promise<DraggedPage> => {
  const phone = await newProbedPage(browser);
  await chart(phone);
  for (const [i, [from, to]] of (
    [
      [0.35, 0.6],
      [0.6, 0.4],
      [0.4, 0.55],
    ] as const
  ).entries()) {
    await drawThread(phone, await courtBox(phone), from, to);
    await phone.getByTestId(`chip-${i}`).waitFor();
  }
  // Set up with a mouse, which the browser goes on asking what it is over; a phone has none, and opened anew neither.
  await phone.reload();
  await phone.getByTestId("chip-2").waitFor();
  return slowed(phone, await courtBox(phone));
};

/** The floor: a page whose handler only puts the end of one line, in an area of the same place and size. */
export const openDraggedFloor = async (browser: Browser, box: Box): Promise<DraggedPage> => {
  const page = await newProbedPage(browser);
  await page.route(`${FLOOR_ADDRESS}*`, (route) =>
    route.fulfill({ contentType: "text/html", body: inPage("drag-floor.html") }),
  );
  const place = `x=${box.x}&y=${box.y}&width=${box.width}&height=${box.height}`;
  await page.goto(`${FLOOR_ADDRESS}?${place}`);
  return slowed(page, await courtBox(page));
};
