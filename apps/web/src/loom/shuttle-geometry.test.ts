import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { besideCount, inTen, rateSentence } from "./rate-words.ts";
import { shuttleDrawing, spanOf, taperPath } from "./shuttle-geometry.ts";

const usual = { mean: 0.3, low: 0.22, high: 0.4 };
const rate = { x: 5, n: 9, low: 0.267, high: 0.811 };

describe("shuttle", () => {
  it("[BD6] draws nothing of nothing and loose beads under five", () => {
    expect(shuttleDrawing({ x: 0, n: 0 })).toEqual({ kind: "none" });
    expect(shuttleDrawing({ x: 1, n: 3, low: 0.06, high: 0.79 })).toEqual({
      kind: "beads",
      filled: 1,
      hollow: 2,
    });
    expect(shuttleDrawing({ x: 0, n: 5, low: 0, high: 0.43 })).toMatchObject({ kind: "shuttle", bead: 0 });
  });

  it("[BD6] puts the bead at the count and tapers to the ends of the interval", () => {
    const drawing = shuttleDrawing(rate);
    expect(drawing).toMatchObject({ kind: "shuttle" });
    if (drawing.kind !== "shuttle") return;
    expect(drawing.bead).toBeCloseTo(55.56, 1);
    expect(drawing.taper.from).toBeCloseTo(26.7, 5);
    expect(drawing.taper.width).toBeCloseTo(54.4, 5);
  });

  it("[BD6] keeps every drawing on the scale from 0 to 10", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1, max: 2, noNaN: true }),
        fc.double({ min: -1, max: 2, noNaN: true }),
        (a, b) => {
          const span = spanOf(a, b);
          expect(span.from).toBeGreaterThanOrEqual(0);
          expect(span.width).toBeGreaterThanOrEqual(0);
          expect(span.from + span.width).toBeLessThanOrEqual(100.000001);
        },
      ),
      { seed: 20260704 },
    );
  });

  it("[BD6] draws a taper that begins and ends in a point", () => {
    expect(taperPath(53.05)).toMatch(/^M0 50C.* 100 50C.* 0 50Z$/);
  });
});

describe("words of a rate", () => {
  it("[BD6] gives the count first and a rate only from five on", () => {
    expect(besideCount({ x: 1, n: 3 }, usual)).toBe("too few to say");
    expect(besideCount(rate, usual)).toBe("usually 3 in 10");
    expect(besideCount(rate)).toBe("");
    expect(inTen(0.04)).toBe("fewer than 1 in 10");
  });

  it("[BD6] says the picture in words", () => {
    expect(rateSentence("Line balls missed, Noor V.", rate, usual)).toBe(
      "Line balls missed, Noor V.: 5 of 9, likely between 27 and 81 in 100, usually 3 in 10",
    );
    expect(rateSentence("Line balls missed", { x: 1, n: 3, low: 0.1, high: 0.8 }, usual)).toBe(
      "Line balls missed: 1 of 3, too few to say",
    );
    expect(rateSentence("Line balls missed", { x: 0, n: 0 })).toBe("Line balls missed: none yet");
  });
});
