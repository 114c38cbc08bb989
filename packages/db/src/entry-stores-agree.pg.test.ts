import fc from "fast-check";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { AppendItem, EntryStore, MatchRef } from "./entry-store.ts";
import { createMemoryEntryStore, type MemoryEntryStore } from "./memory-entry-store.ts";
import { type Db, openDb } from "./open-db.ts";
import { createPostgresEntryStore } from "./postgres-entry-store.ts";
import { type FreshDatabase, freshDatabase } from "./testing/fresh-database.ts";
import { item, laneOf, openingOf } from "./testing/log-fixtures.ts";
import { seedAcademy, seedMatch } from "./testing/seed-academy.ts";

const ACADEMY = "curlew";
const SEED = 20_260_530;
const RUNS = 40;

type Step =
  | { readonly kind: "openMatch"; readonly server: "A" | "B" }
  | {
      readonly kind: "openLane";
      readonly lane: string;
      readonly owner: "member" | "courtside";
      readonly takeOver: string | undefined;
      readonly second: boolean;
    }
  | {
      readonly kind: "append";
      readonly lane: string;
      readonly from: number;
      readonly marks: readonly ("same" | "other" | "rejected")[];
    }
  | { readonly kind: "desk"; readonly id: string | undefined }
  | { readonly kind: "seal" }
  | { readonly kind: "heard"; readonly heardMs: number; readonly unsent: number }
  | { readonly kind: "read"; readonly after: number; readonly limit: number };

const lane = fc.constantFrom("one", "one", "one", "two", "desk");
const step: fc.Arbitrary<Step> = fc.oneof(
  {
    weight: 2,
    arbitrary: fc.record({ kind: fc.constant("openMatch"), server: fc.constantFrom("A", "A", "B") }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      kind: fc.constant("openLane"),
      lane,
      owner: fc.constantFrom("courtside", "courtside", "member"),
      takeOver: fc.constantFrom(undefined, "one", "two"),
      second: fc.constantFrom(false, false, false, true),
    }),
  },
  {
    weight: 10,
    arbitrary: fc.record({
      kind: fc.constant("append"),
      lane,
      from: fc.integer({ min: 1, max: 9 }),
      marks: fc.array(fc.constantFrom("same", "same", "same", "same", "rejected", "other"), {
        minLength: 1,
        maxLength: 6,
      }),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({ kind: fc.constant("desk"), id: fc.constantFrom("walkover", undefined, "one-2") }),
  },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant("seal") }) },
  {
    weight: 1,
    arbitrary: fc.record({
      kind: fc.constant("heard"),
      heardMs: fc.integer({ min: 1_780_000_000_000, max: 1_780_000_000_009 }),
      unsent: fc.nat(9),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      kind: fc.constant("read"),
      after: fc.nat(12),
      limit: fc.integer({ min: 1, max: 9 }),
    }),
  },
) as fc.Arbitrary<Step>;

function toItem(laneId: string, n: number, mark: "same" | "other" | "rejected"): AppendItem {
  if (mark === "rejected") return { n, rejected: { code: "bad_shape", raw: { laneId, n, odd: [1, null] } } };
  return item(laneId, n, mark === "other" ? "-other" : "");
}

async function take(store: EntryStore, match: MatchRef, taken: Step): Promise<unknown> {
  switch (taken.kind) {
    case "openMatch":
      return store.openMatch({
        ...match,
        opened: { ...openingOf(match.matchId), firstServer: taken.server },
      });
    case "openLane": {
      const owner = { kind: taken.owner, id: "somebody" } as const;
      const takeOver = taken.takeOver === undefined ? {} : { takeOver: taken.takeOver };
      const second = taken.second ? { second: true as const } : {};
      return store.openLane({ ...laneOf(ACADEMY, match.matchId, taken.lane), owner, ...takeOver, ...second });
    }
    case "append": {
      const items = taken.marks.map((mark, i) => toItem(taken.lane, taken.from + i, mark));
      return store.append({ ...match, laneId: taken.lane, items });
    }
    case "desk": {
      const id = taken.id === undefined ? {} : { entryId: taken.id };
      return store.appendDesk({ ...match, body: { kind: "PointReplayed" }, ...id });
    }
    case "seal":
      return store.sealMatch(match);
    case "heard":
      return store.recordHeard([{ ...match, heardMs: taken.heardMs, unsent: taken.unsent }]);
    case "read":
      return store.read({ ...match, after: taken.after, limit: taken.limit });
  }
}

let database: FreshDatabase;
let db: Db;
let postgres: EntryStore;
let memory: MemoryEntryStore;
let matches = 0;

/** The same ids and times for both, so that whole answers can be compared. */
const countingIds = () => {
  let made = 0;
  return () => {
    made += 1;
    return `desk-made-${made}`;
  };
};

beforeAll(async () => {
  database = await freshDatabase();
  db = openDb(database.appUrl);
  await seedAcademy(db, ACADEMY);
  const wallMs = () => 1_780_000_000_000;
  postgres = createPostgresEntryStore(db, { log: () => undefined, newId: countingIds(), wallMs });
  const incarnation = await postgres.incarnation();
  memory = createMemoryEntryStore({
    incarnation: incarnation.ok ? incarnation.value : "",
    newId: countingIds(),
    wallMs,
  });
});

afterAll(async () => {
  await db.close();
  await database.drop();
});

it(`[ES4] answers alike in memory and in Postgres, whatever the order of calls (seed ${SEED})`, async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(step, { minLength: 5, maxLength: 25 }), async (steps) => {
      matches += 1;
      const match = { academyId: ACADEMY, matchId: `match-${matches}` };
      await seedMatch(db, match.academyId, match.matchId);
      memory.addMatch({ ...match, dayId: null, courtId: null });
      for (const taken of steps) {
        const expected = await take(memory, match, taken);
        expect(await take(postgres, match, taken), JSON.stringify(taken)).toEqual(expected);
      }
      expect(await postgres.head(match)).toEqual(await memory.head(match));
      expect(await postgres.lanes(match)).toEqual(await memory.lanes(match));
      const all = { ...match, after: 0, limit: 1000 };
      const log = await postgres.read(all);
      expect(log).toEqual(await memory.read(all));
      const positions = log.ok ? log.value.entries.map(({ pos }) => pos) : [];
      expect(positions).toEqual(positions.map((_, i) => i + 1));
    }),
    { seed: SEED, numRuns: RUNS },
  );
}, 120_000);
