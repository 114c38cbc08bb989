import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeCourtMap, toCourt, toScreen } from "./court-map.ts";

const seats = fc.constantFrom("behind" as const, "side" as const);
const sizes = fc.record({
  width: fc.integer({ min: 300, max: 1400 }),
  height: fc.integer({ min: 180, max: 1000 }),
});

describe("the drawn court", () => {
  it("[PD2] gives back the place that it drew, to the centimetre, from both seats and at any size", () => {
    const places = fc.record({
      right: fc.integer({ min: -1700, max: 1700 }),
      away: fc.integer({ min: -1700, max: 1700 }),
    });
    fc.assert(
      fc.property(seats, sizes, places, (seat, { width, height }, place) => {
        const map = makeCourtMap(seat, width, height);
        fc.pre(place.away > 200 - map.distance);
        expect(toCourt(map, toScreen(map, place))).toEqual(place);
      }),
      { seed: 11 },
    );
  });

  it("[PD2] fits a phone with room for balls struck behind the baseline and ending past it", () => {
    const map = makeCourtMap("behind", 390, 400);
    expect(toScreen(map, { right: 0, away: -1518 }).y).toBeLessThanOrEqual(400.5);
    expect(toScreen(map, { right: 0, away: 1518 }).y).toBeGreaterThanOrEqual(-0.5);
    expect(toScreen(map, { right: -540, away: -1189 }).x).toBeGreaterThan(0);
    expect(toScreen(map, { right: -412, away: -1189 }).x).toBeLessThan(
      toScreen(map, { right: -412, away: 1189 }).x,
    );
  });

  it("[PD2] shows both baselines left and right from a seat at the side", () => {
    const map = makeCourtMap("side", 390, 400);
    const left = toScreen(map, { right: -1189, away: -412 });
    const right = toScreen(map, { right: 1189, away: -412 });
    expect(left.x).toBeGreaterThan(20);
    expect(right.x).toBeLessThan(370);
    expect(toScreen(map, { right: 0, away: 412 }).y).toBeLessThan(toScreen(map, { right: 0, away: -412 }).y);
  });

  it("[PD2] takes a finger that left the drawing as far away, never as nowhere", () => {
    fc.assert(
      fc.property(
        seats,
        fc.integer({ min: -5_000, max: 5_000 }),
        fc.integer({ min: -5_000, max: 5_000 }),
        (seat, x, y) => {
          const { right, away } = toCourt(makeCourtMap(seat, 390, 400), { x, y });
          for (const cm of [right, away]) {
            expect(Number.isInteger(cm)).toBe(true);
            expect(Math.abs(cm)).toBeLessThanOrEqual(3_000);
          }
        },
      ),
      { seed: 12 },
    );
  });
});
