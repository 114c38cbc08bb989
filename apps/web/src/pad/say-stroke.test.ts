import { readStroke, seenFrom } from "@courtloom/tennis";
import { describe, expect, it } from "vitest";
import { sayShort, sayStroke } from "./say-stroke.ts";

const view = { seat: "behind", endOfA: "near", striker: "A" } as const;
/** A stroke by its ends in the striker's metres. */
const stroke = (fromX: number, toX: number, toY: number) =>
  readStroke({ ...view, ...seenFrom({ from: { x: fromX, y: -12 }, to: { x: toX, y: toY } }, view) });

describe("what a drawing is understood as", () => {
  it.each([
    [3, 3, 10, "Down the line", "deep"],
    [3, -3, 5, "Cross-court", "short"],
    [3, 0, 8, "Middle", ""],
    [0, 3, 10, "From the middle", "deep"],
    [3, 3, 13.5, "Down the line", "long"],
    [3, 5.6, 8, "Down the line", "wide"],
    [3, 3, -2, "Down the line", "net"],
    [3, 3, 12.3, "Down the line", "near the line: in or long"],
    [3, 3, -0.3, "Down the line", "near the net: over or net"],
  ])("[PD3] from %d to %d at %d is %s, %s", (fromX, toX, toY, lead, rest) => {
    expect(sayStroke(stroke(fromX, toX, toY))).toEqual({ lead, rest });
  });

  it("[PD3] says of a touch only that the ball was kept", () => {
    expect(sayStroke(undefined)).toEqual({ lead: "Kept", rest: "cross-court or middle" });
    expect(sayShort(undefined)).toBe("kept");
  });
});
