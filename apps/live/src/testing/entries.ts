import type { Side } from "@courtloom/core";
import type { Entry } from "@courtloom/match-log";

/** A lower-case UUID made of two small numbers. */
export const entryId = (lane: number, n: number): string =>
  `00000000-0000-4000-8000-${String(lane).padStart(4, "0")}${String(n).padStart(8, "0")}`;

/** A point with every ball drawn, with one line ball by side A. */
export const pointEntry = (lane: number, n: number, winner: Side = "A"): Entry => ({
  v: 1,
  id: entryId(lane, n),
  n,
  atMs: n * 1_000,
  wallMs: 1_780_000_000_000 + n * 1_000,
  body: {
    kind: "PointCharted",
    point: {
      winner,
      level: "every",
      seat: "behind",
      endOfA: "near",
      serve: { outcome: "firstIn", faults: 0 },
      shots: [
        {
          striker: "A",
          from: { right: 300, away: -1_100 },
          to: { right: 300, away: 1_000 },
          kind: "groundstroke",
        },
      ],
    },
  },
});

/** Points in each of which side A misses the same line ball, numbered from `from` to `to`. */
export const missedLineBalls = (from: number, to: number): Entry[] =>
  pointEntries(1, from, to).map((entry) => {
    if (entry.body.kind !== "PointCharted") return entry;
    const [shot] = entry.body.point.shots ?? [];
    if (!shot) return entry;
    const wide = { ...shot, to: { right: 480, away: 1_000 }, result: "missed", miss: "wide" } as const;
    return { ...entry, body: { ...entry.body, point: { ...entry.body.point, winner: "B", shots: [wide] } } };
  });

export const pointEntries = (lane: number, from: number, to: number): Entry[] =>
  Array.from({ length: to - from + 1 }, (_, i) =>
    pointEntry(lane, from + i, (from + i) % 3 === 0 ? "B" : "A"),
  );
