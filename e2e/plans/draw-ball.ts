import type { Page } from "@playwright/test";

/** A place on the court in the striker's metres: x to the right, the striker's half negative. */
export interface TriedPlace {
  readonly x: number;
  readonly y: number;
}

interface DrawnMap {
  readonly distance: number;
  readonly middle: number;
  readonly spread: number;
  readonly horizon: number;
  readonly drop: number;
}

const toPixels = async (page: Page): Promise<(place: TriedPlace) => { x: number; y: number }> => {
  const court = page.getByTestId("try-court");
  await court.scrollIntoViewIfNeeded();
  const map = JSON.parse((await court.getAttribute("data-map")) ?? "") as DrawnMap;
  const box = await court.boundingBox();
  if (!box) throw new Error("the court is not drawn");
  return ({ x, y }) => {
    const s = 1 / (y * 100 + map.distance);
    return { x: box.x + map.middle + map.spread * x * 100 * s, y: box.y + map.horizon + map.drop * s };
  };
};

/** Draws a ball with the mouse: pressed where it is struck, lifted where it goes. */
export const drawBall = async (page: Page, from: TriedPlace, to: TriedPlace): Promise<void> => {
  const at = await toPixels(page);
  const [start, end] = [at(from), at(to)];
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.mouse.move((start.x + end.x) / 2, (start.y + end.y) / 2, { steps: 3 });
  await page.mouse.move(end.x, end.y, { steps: 3 });
  await page.mouse.up();
};

/** The same with one finger, as the browser hears it from a touch screen. */
export const drawBallByFinger = async (page: Page, from: TriedPlace, to: TriedPlace): Promise<void> => {
  const at = await toPixels(page);
  const [start, end] = [at(from), at(to)];
  const session = await page.context().newCDPSession(page);
  const send = (type: "touchStart" | "touchMove" | "touchEnd", x: number, y: number) =>
    session.send("Input.dispatchTouchEvent", { type, touchPoints: type === "touchEnd" ? [] : [{ x, y }] });
  await send("touchStart", start.x, start.y);
  for (const part of [0.25, 0.5, 0.75, 1]) {
    await send("touchMove", start.x + (end.x - start.x) * part, start.y + (end.y - start.y) * part);
  }
  await send("touchEnd", end.x, end.y);
  await session.detach();
};
