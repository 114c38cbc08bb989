import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CHANNELS, type Channel } from "./channel.ts";
import { COURT, JITTER } from "./court.ts";
import { directionBetween, directionOf, isDirectionCertain } from "./direction.ts";
import { endedAt, isEndedCertain } from "./ended.ts";
import type { EndSeen, Seat } from "./raw-stroke.ts";
import { seenFrom } from "./striker-view.ts";
import { readStroke } from "./stroke.ts";

const RUNS = { seed: 20260314, numRuns: 1000 };
const THIRD = COURT.singlesWidth / 3;
const MIDDLE_OF: Readonly<Record<Channel, number>> = { left: -THIRD, middle: 0, right: THIRD };

const error = fc.double({ min: -JITTER, max: JITTER, noNaN: true });
const errors = fc.record({ x: error, y: error });
const channel = fc.constantFrom(...CHANNELS);
const seats = fc.constantFrom<readonly [Seat, EndSeen]>(
  ["behind", "near"],
  ["behind", "far"],
  ["side", "left"],
  ["side", "right"],
);
const metres = (most: number) => fc.integer({ min: -most * 100, max: most * 100 }).map((cm) => cm / 100);
const anyPoint = fc.record({ x: metres(7), y: metres(15) });

describe("[G12] drawing error of 12 % of the court's width in each coordinate", () => {
  it("is what the allowance says", () => {
    expect(JITTER).toBeCloseTo(0.12 * COURT.singlesWidth, 2);
  });

  it("keeps channel and choice of every stroke aimed at the middle of a channel, from every seat and end", () => {
    const depth = fc.double({ min: 2, max: 14, noNaN: true });
    fc.assert(
      fc.property(
        channel,
        channel,
        fc.double({ min: 1, max: 15, noNaN: true }),
        depth,
        errors,
        errors,
        seats,
        fc.constantFrom("A" as const, "B" as const),
        (from, to, struckAt, landsAt, e1, e2, [seat, endOfA], striker) => {
          const drawn = {
            from: { x: MIDDLE_OF[from] + e1.x, y: e1.y - struckAt },
            to: { x: MIDDLE_OF[to] + e2.x, y: landsAt + e2.y },
          };
          const view = { seat, endOfA, striker };
          const stroke = readStroke({ ...view, ...seenFrom(drawn, view) });
          expect(stroke.channel).toBe(from);
          expect(stroke.toChannel).toBe(to);
          expect(stroke.direction).toBe(directionBetween(from, to));
        },
      ),
      RUNS,
    );
  });

  it("never calls a direction certain that an error within the allowance would change", () => {
    let certain = 0;
    fc.assert(
      fc.property(anyPoint, anyPoint, errors, errors, (from, to, e1, e2) => {
        if (!isDirectionCertain({ from, to })) return;
        certain++;
        const moved = {
          from: { x: from.x + e1.x, y: from.y + e1.y },
          to: { x: to.x + e2.x, y: to.y + e2.y },
        };
        expect(directionOf(moved)).toBe(directionOf({ from, to }));
      }),
      { ...RUNS, numRuns: 5000 },
    );
    expect(certain).toBeGreaterThan(500);
  });

  it("never calls an ending certain that an error within the allowance would change", () => {
    let certain = 0;
    fc.assert(
      fc.property(anyPoint, errors, (to, e) => {
        if (!isEndedCertain(to)) return;
        certain++;
        expect(endedAt({ x: to.x + e.x, y: to.y + e.y })).toBe(endedAt(to));
      }),
      { ...RUNS, numRuns: 3000 },
    );
    expect(certain).toBeGreaterThan(500);
  });

  it("carries the error of a net ball on to the far baseline, where it grows", () => {
    expect(isDirectionCertain({ from: { x: THIRD, y: -13 }, to: { x: THIRD, y: -1 } })).toBe(false);
    expect(isDirectionCertain({ from: { x: THIRD, y: -12 }, to: { x: -THIRD, y: 8 } })).toBe(true);
    expect(isDirectionCertain({ from: { x: 5, y: -12 }, to: { x: 5, y: 0 } })).toBe(true);
  });
});
