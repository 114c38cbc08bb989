import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { EndSeen, Seat, SeenPoint } from "./raw-stroke.ts";
import { endFrom, seenByStriker, seenFrom, turnEnds, type View } from "./striker-view.ts";

const SEATS: readonly (readonly [Seat, EndSeen])[] = [
  ["behind", "near"],
  ["behind", "far"],
  ["side", "left"],
  ["side", "right"],
];

const anyView: fc.Arbitrary<View> = fc
  .record({
    place: fc.constantFrom(...SEATS),
    striker: fc.constantFrom("A" as const, "B" as const),
  })
  .map(({ place: [seat, endOfA], striker }) => ({ seat, endOfA, striker }));

const centimetres = fc.record({
  right: fc.integer({ min: -1600, max: 1600 }),
  away: fc.integer({ min: -1600, max: 1600 }),
});

describe("[G3] the striker's own metres", () => {
  // The corner to the striker's right on the own baseline, from each seat, for side A and for side B.
  it.each([
    ["behind", "near", "A", { right: 412, away: -1189 }],
    ["behind", "far", "A", { right: -412, away: 1189 }],
    ["behind", "near", "B", { right: -412, away: 1189 }],
    ["behind", "far", "B", { right: 412, away: -1189 }],
    ["side", "left", "A", { right: -1189, away: -412 }],
    ["side", "right", "A", { right: 1189, away: 412 }],
    ["side", "left", "B", { right: 1189, away: 412 }],
    ["side", "right", "B", { right: -1189, away: -412 }],
  ] as const)(
    "seen from %s with A %s, the right-hand baseline corner of %s is %j",
    (seat, endOfA, striker, seen) => {
      const view = { seat, endOfA, striker };
      expect(seenByStriker(seen, view)).toEqual({ x: 4.12, y: -11.89 });
      expect(seenByStriker({ right: 0, away: 0 }, view)).toEqual({ x: 0, y: 0 });
    },
  );

  it("[G1] is the same stroke from every seat, and comes back whole", () => {
    fc.assert(
      fc.property(centimetres, centimetres, anyView, anyView, (from, to, view, other) => {
        const read = (a: SeenPoint, b: SeenPoint, seen: View) => ({
          from: seenByStriker(a, seen),
          to: seenByStriker(b, seen),
        });
        const path = read(from, to, view);
        expect(seenFrom(path, view)).toEqual({ from, to });
        const elsewhere = seenFrom(path, other);
        expect(read(elsewhere.from, elsewhere.to, other)).toEqual(path);
      }),
      { seed: 7, numRuns: 500 },
    );
  });
});

describe("[G4] ends", () => {
  it("turns to the other end and back", () => {
    for (const [, end] of SEATS) expect(turnEnds(turnEnds(end))).toBe(end);
    expect(SEATS.map(([, end]) => turnEnds(end))).toEqual(["far", "near", "right", "left"]);
  });

  it("mends a stroke drawn with the ends wrong: the same drawing, from the other end, by the other half", () => {
    fc.assert(
      fc.property(centimetres, anyView, (point, view) => {
        const { x, y } = seenByStriker(point, view);
        const mended = seenByStriker(point, { ...view, endOfA: turnEnds(view.endOfA) });
        expect(mended).toEqual({ x: 0 - x, y: 0 - y });
      }),
      { seed: 7 },
    );
  });

  it("names the same end from the other kind of seat", () => {
    expect(endFrom("side", "near")).toBe("left");
    expect(endFrom("behind", "right")).toBe("far");
    for (const [seat, end] of SEATS) expect(endFrom(seat, end)).toBe(end);
  });
});
