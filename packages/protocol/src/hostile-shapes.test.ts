import type { Entry } from "@courtloom/match-log";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseEntry } from "./entry-shape.ts";
import { boardWatchShape } from "./up/board-watch.ts";
import { courtWatchShape } from "./up/court-watch.ts";
import { laneAppendShape } from "./up/lane-append.ts";
import { laneBeatShape } from "./up/lane-beat.ts";
import { laneOpenShape } from "./up/lane-open.ts";
import { leaveShape } from "./up/leave.ts";

const RUNS = { seed: 20260530, numRuns: 2_000 };
const ENVELOPES = [
  laneOpenShape,
  laneAppendShape,
  laneBeatShape,
  courtWatchShape,
  boardWatchShape,
  leaveShape,
];

const good: Entry = {
  v: 1,
  id: "00000000-0000-4000-8000-000000000001",
  n: 1,
  atMs: 0,
  wallMs: 1,
  body: {
    kind: "PointCharted",
    point: {
      winner: "A",
      level: "key",
      seat: "behind",
      endOfA: "near",
      serve: { outcome: "firstIn", faults: 0 },
      shots: [{ striker: "A", from: { right: 10, away: -900 }, to: { right: 300, away: 900 } }],
    },
  },
};

/** Anything that JSON can carry, keys with a meaning of their own included. */
const key = fc.oneof(
  fc.constantFrom("__proto__", "constructor", "toString", "v", "kind", "body"),
  fc.string(),
);
const { tree } = fc.letrec((tie) => ({
  tree: fc.oneof(
    { maxDepth: 4 },
    fc.jsonValue({ maxDepth: 1 }),
    fc.array(tie("tree"), { maxLength: 4 }),
    fc.array(fc.tuple(key, tie("tree")), { maxLength: 4 }).map((pairs) => {
      const made: Record<string, unknown> = {};
      for (const [name, value] of pairs) {
        Object.defineProperty(made, name, { value, enumerable: true, configurable: true, writable: true });
      }
      return made;
    }),
  ),
}));

/** Paths to every member of `value`, the ones inside included. */
const pathsOf = (
  value: unknown,
  path: readonly (string | number)[] = [],
): (readonly (string | number)[])[] =>
  typeof value === "object" && value !== null
    ? Object.entries(value).flatMap(([name, inner]) => [[...path, name], ...pathsOf(inner, [...path, name])])
    : [];

const replaceAt = (value: unknown, [head, ...rest]: readonly (string | number)[], by: unknown): unknown => {
  if (head === undefined) return by;
  const copy = structuredClone(value) as Record<string | number, unknown>;
  copy[head] = replaceAt(copy[head], rest, by);
  return copy;
};

describe("messages from anybody", () => {
  it("[PR3] are refused or read, whatever they are, and nothing is thrown", () => {
    fc.assert(
      fc.property(tree, (raw) => {
        for (const shape of ENVELOPES) shape.safeParse(raw);
        expect(parseEntry(raw).ok).toBe(false);
      }),
      RUNS,
    );
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  it("[PR3] an entry with one member changed is refused or comes out as it went in", () => {
    const paths = pathsOf(good);
    let refused = 0;
    fc.assert(
      fc.property(fc.constantFrom(...paths), tree, (path, by) => {
        const raw = replaceAt(good, path, by);
        const parsed = parseEntry(raw);
        if (!parsed.ok) refused += 1;
        else expect(JSON.parse(JSON.stringify(parsed.value))).toEqual(JSON.parse(JSON.stringify(raw)));
      }),
      RUNS,
    );
    expect(refused).toBeGreaterThan(1_000);
  });

  it("[PR3] takes a good entry unchanged, and refuses unknown members and inherited names", () => {
    expect(parseEntry(good)).toEqual({ ok: true, value: good });
    expect(parseEntry({ ...good, more: 1 }).ok).toBe(false);
    expect(parseEntry(JSON.parse(JSON.stringify(good).replace("{", '{"__proto__":{"polluted":1},'))).ok).toBe(
      false,
    );
    expect(parseEntry({ ...good, body: { kind: "toString" } }).ok).toBe(false);
  });

  it("[PR5] opening, taking over and sealing are not a phone's to write", () => {
    for (const kind of ["MatchOpened", "MatchSealed", "LeadTaken"]) {
      expect(parseEntry({ ...good, body: { kind, laneId: "lane-2", epoch: 2 } })).toEqual({
        ok: false,
        error: "bad_shape",
      });
    }
  });
});
