import { describe, expect, it } from "vitest";
import { isChangeOfDirection } from "./change-of-direction.ts";
import { channelAt } from "./channel.ts";
import { depthStruckAt, type Hand, strokeSideAt } from "./contact.ts";
import { aimOf, directionBetween } from "./direction.ts";
import { endedAt, isEndedCertain, landingDepth } from "./ended.ts";
import type { RawStroke } from "./raw-stroke.ts";
import { insideName, readStroke } from "./stroke.ts";

/** A stroke of side A at the near end, in metres. */
const near = (fromX: number, fromY: number, toX: number, toY: number): RawStroke => ({
  seat: "behind",
  endOfA: "near",
  striker: "A",
  from: { right: Math.round(fromX * 100), away: Math.round(fromY * 100) },
  to: { right: Math.round(toX * 100), away: Math.round(toY * 100) },
});

describe("channels and directions", () => {
  it.each([
    [-5, "left"],
    [-1.37, "left"],
    [-1.36, "middle"],
    [0, "middle"],
    [1.36, "middle"],
    [1.37, "right"],
    [6, "right"],
  ] as const)("[G5] %f m is %s", (x, channel) => expect(channelAt(x)).toBe(channel));

  it.each([
    ["left", "left", "line"],
    ["left", "middle", "middle"],
    ["left", "right", "cross"],
    ["middle", "left", "fromMiddle"],
    ["middle", "middle", "middle"],
    ["middle", "right", "fromMiddle"],
    ["right", "left", "cross"],
    ["right", "middle", "middle"],
    ["right", "right", "line"],
  ] as const)("[G6] from %s to %s is %s", (from, to, direction) => {
    expect(directionBetween(from, to)).toBe(direction);
  });

  it.each([
    ["line ball into the net", near(2.7, -12, 2.7, 0), "line", "right", "net"],
    ["cross-court ball into the net at the middle", near(2.7, -12, 0, 0), "cross", "left", "net"],
    ["cross-court ball that dies on the own side", near(-2.7, -12, -0.5, -2), "cross", "right", "net"],
    ["ball to the middle into the net", near(2.8, -12, 1.4, 0), "middle", "middle", "net"],
    ["net ball drawn a little beyond the net", near(2.7, -12, 0.2, 0.5), "cross", "left", "in"],
    ["ball in play that lands near the service line", near(2.7, -12, -2.7, 6), "cross", "left", "in"],
    ["short drop shot", near(2.7, -6, 2, 1.5), "line", "right", "in"],
  ] as const)("[G7] %s is judged by its direction", (_title, raw, direction, toChannel, ended) => {
    expect(readStroke(raw)).toMatchObject({ direction, toChannel, ended });
  });

  it("[G7] has no direction when the drawing ends at the net without going forward", () => {
    expect(readStroke(near(2, -5, 0, -5))).toMatchObject({
      direction: undefined,
      toChannel: undefined,
      ended: "net",
      isDirectionCertain: false,
    });
    expect(aimOf({ from: { x: 0, y: -3 }, to: { x: 1, y: -6 } })).toBeUndefined();
  });

  it("[G7] carries a net ball on to the far baseline", () => {
    const aim = aimOf({ from: { x: 2, y: -11.885 }, to: { x: 1, y: 0 } });
    expect(aim?.x).toBeCloseTo(0, 10);
    expect(aim?.y).toBe(11.885);
  });
});

describe("where it ended", () => {
  it.each([
    [0, 0, "net"],
    [0, -3, "net"],
    [0, 0.01, "in"],
    [4.12, 5, "in"],
    [4.13, 5, "wide"],
    [-4.13, 5, "wide"],
    [0, 11.89, "in"],
    [0, 11.9, "long"],
    [5, 12, "wide"],
    [4.3, 13, "long"],
    [9, -1, "net"],
  ] as const)("[G8] %f, %f is %s", (x, y, ended) => expect(endedAt({ x, y })).toBe(ended));

  it.each([
    [0, 6, true],
    [3, 6, true],
    [3.3, 6, false],
    [0, 10.8, true],
    [0, 11, false],
    [0, 0.9, false],
    [0, -1.2, true],
    [0, -0.5, false],
    [5.2, 6, true],
    [4.5, 6, false],
    [0, 13, true],
  ])("[G12] %f, %f is certain: %s", (x, y, certain) => expect(isEndedCertain({ x, y })).toBe(certain));

  it.each([
    [0, undefined],
    [3, "short"],
    [6.39, "short"],
    [6.4, "mid"],
    [9.13, "mid"],
    [9.14, "deep"],
    [13, "deep"],
  ] as const)("[G9] %f m beyond the net is %s", (y, depth) => expect(landingDepth({ x: 0, y })).toBe(depth));
});

describe("where and how it was struck", () => {
  it.each([
    [-14, "behindBaseline"],
    [-11.885, "behindBaseline"],
    [-11.88, "insideBaseline"],
    [-6.4, "insideBaseline"],
    [-6.39, "insideServiceLine"],
    [-0.5, "insideServiceLine"],
  ] as const)("[G10] at %f m it is %s", (y, depth) => expect(depthStruckAt(y)).toBe(depth));

  it.each([
    ["right", "right", "forehand"],
    ["left", "right", "backhand"],
    ["right", "left", "backhand"],
    ["left", "left", "forehand"],
    ["middle", "right", "unknown"],
    ["middle", "left", "unknown"],
    ["right", "unknown", "unknown"],
  ] as const)("[G11] in the %s channel with the %s hand it is a %s", (channel, hand, side) => {
    expect(strokeSideAt(channel, hand)).toBe(side);
  });

  it("[G11] changes the stroke side with the hand, never the choice", () => {
    const hands: readonly Hand[] = ["right", "left", "unknown"];
    const raw = near(-2.7, -12, -2.7, 10);
    const strokes = hands.map((hand) => readStroke(raw, hand));
    expect(strokes.map((stroke) => stroke.strokeSide)).toEqual(["backhand", "forehand", "unknown"]);
    expect(new Set(strokes.map((stroke) => stroke.direction))).toEqual(new Set(["line"]));
  });

  it.each([
    ["forehand", "right", near(-2.7, -12, 2.7, 10), "insideOut"],
    ["forehand", "right", near(-2.7, -12, -2.7, 10), "insideIn"],
    ["forehand", "left", near(2.7, -12, -2.7, 10), "insideOut"],
    ["backhand", "right", near(2.7, -12, 2.7, 10), "insideIn"],
    ["forehand", "right", near(-2.7, -12, 0, 10), undefined],
    ["backhand", "right", near(-2.7, -12, 2.7, 10), undefined],
    ["forehand", "right", near(0, -12, 2.7, 10), undefined],
    ["unknown", "right", near(-2.7, -12, 2.7, 10), undefined],
  ] as const)("[G13] a %s by a %s-hander is named (%#)", (strokeSide, hand, raw, name) => {
    const stroke = readStroke(raw, hand);
    expect(insideName(stroke, strokeSide, hand)).toBe(name);
    expect(stroke.direction).toBe(readStroke(raw, "unknown").direction);
  });
});

describe("[G14] change of direction", () => {
  const far = (fromX: number, toX: number): RawStroke => ({
    seat: "behind",
    endOfA: "near",
    striker: "B",
    from: { right: Math.round(-fromX * 100), away: 1200 },
    to: { right: Math.round(-toX * 100), away: -1000 },
  });

  it.each([
    ["cross-court answered cross-court", far(2.7, -2.7), near(2.7, -12, -2.7, 10), false],
    ["cross-court answered down the line", far(2.7, -2.7), near(2.7, -12, 2.7, 10), true],
    ["a line ball answered down the line", far(2.7, 2.7), near(-2.7, -12, -2.7, 10), false],
    ["a line ball answered cross-court", far(2.7, 2.7), near(-2.7, -12, 2.7, 10), true],
    ["cross-court answered to the middle", far(2.7, -2.7), near(2.7, -12, 0, 10), true],
    ["from the middle, answered to the middle", far(0, 2.7), near(-2.7, -12, 0, 10), false],
  ])("%s", (_title, incoming, own, changed) => {
    expect(isChangeOfDirection(readStroke(incoming), readStroke(own))).toBe(changed);
  });

  it("is unknown when the incoming ball was not drawn or the answer has no direction", () => {
    expect(isChangeOfDirection(undefined, readStroke(near(2, -12, 2, 10)))).toBeUndefined();
    expect(isChangeOfDirection(readStroke(far(2, -2)), readStroke(near(2, -5, 0, -5)))).toBeUndefined();
  });
});
