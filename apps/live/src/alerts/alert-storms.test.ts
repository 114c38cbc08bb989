import { createMemoryAlertStore } from "@courtloom/db";
import { watchesOf } from "@courtloom/decisions";
import { applyEntry, type EntryBody, foldLog } from "@courtloom/match-log";
import { idAt, makeLog, openedWith } from "@courtloom/match-log/testing";
import { describe, expect, it } from "vitest";
import { madeLineBall } from "../testing/alert-day.ts";
import { missedLineBalls } from "../testing/entries.ts";
import { sampleWatch } from "../testing/sample-watch.ts";
import { alertChanges, type Folded } from "./alert-changes.ts";
import { alertKeyText } from "./alert-line-of.ts";

const SEED = 20_261_125;
const MATCHES = 200;
const MATCH = { academyId: "curlew", matchId: "match-1" };
const SPIKE = 6;

/** Numbers in [0, 1) that are the same for a seed everywhere. */
const numbersOf = (seed: number) => {
  let state = seed;
  return (): number => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
};

const pointOf = (missed: boolean): Extract<EntryBody, { kind: "PointCharted" }> => {
  const entry = missed ? missedLineBalls(1, 1)[0] : madeLineBall(1);
  if (entry?.body.kind !== "PointCharted") throw new Error("a point");
  return entry.body;
};

const OPENED = openedWith({ watches: [sampleWatch()] });

/** The log after each of its entries, the opening first. */
const prefixesOf = (bodies: readonly EntryBody[]): readonly Folded[] => {
  const entries = makeLog(bodies, OPENED);
  const opening = foldLog(entries.slice(0, 1));
  if (!opening.ok) throw new Error(opening.error);
  let view = opening.value;
  return entries.map((entry, i) => {
    if (i > 0) view = applyEntry(view, entry);
    return { view, entries: entries.slice(0, i + 1) };
  });
};

const wholeOf = (bodies: readonly EntryBody[]): Folded => {
  const whole = prefixesOf(bodies).at(-1);
  if (!whole) throw new Error("a log");
  return whole;
};

/** A match with a spike of misses at a known place, and a storm of corrections after it. */
const scriptOf = (random: () => number) => {
  const calm = 10 + Math.floor(random() * 10);
  const missed = [
    ...Array.from({ length: calm }, () => random() < 0.1),
    ...Array.from({ length: SPIKE }, () => true),
    ...Array.from({ length: 8 }, () => random() < 0.2),
  ];
  const right = [...missed];
  const storm = Array.from({ length: 15 }, (): EntryBody => {
    const at = Math.floor(random() * missed.length);
    const now = random() < 0.4;
    right[at] = now;
    return { kind: "EntryAmended", target: idAt(at + 2), to: pointOf(now) };
  });
  return { spikeEnds: calm + SPIKE, charted: missed.map(pointOf), storm, right: right.map(pointOf) };
};

describe("storms of corrections", () => {
  it(`[AL2, AL11] over ${MATCHES} scripted matches with known spikes, lagging nodes and restarts (seed ${SEED})`, async () => {
    console.log(`storms of corrections: seed ${SEED}`);
    const random = numbersOf(SEED);
    let withdrawals = 0;
    for (let match = 0; match < MATCHES; match += 1) {
      const { spikeEnds, charted, storm, right } = scriptOf(random);
      const bodies = [...charted, ...storm];
      const prefixes = prefixesOf(bodies);
      const store = createMemoryAlertStore();
      const said: string[] = [];
      let clock = 0;
      /** One node looks at the log as far as it has read; rows come from the store each time, as after a restart. */
      const look = async (length: number): Promise<void> => {
        const before = await store.alertsOf(MATCH);
        const had = new Map(before.ok ? before.value.map((row) => [alertKeyText(row), row.state]) : []);
        clock += 1;
        const folded = prefixes[length];
        if (!folded) throw new Error("a prefix");
        const alerts = alertChanges(folded, before.ok ? before.value : [], clock);
        const after = await store.writeAlerts({ ...MATCH, alerts });
        for (const row of after.ok ? after.value : []) {
          const key = alertKeyText(row);
          if (!had.has(key)) said.push(`${key} raised`);
          if (row.state === "withdrawn" && had.get(key) !== "withdrawn") said.push(`${key} withdrawn`);
        }
      };
      for (let length = 1; length <= bodies.length; length += 1) {
        const lag = random() < 0.3 ? Math.floor(random() * 4) : 0;
        await look(Math.max(1, length - lag));
        if (random() < 0.3) await look(length);
        if (length === spikeEnds) {
          await look(length);
          expect([match, said.some((line) => line.endsWith("raised"))]).toEqual([match, true]);
        }
      }
      await look(bodies.length);
      expect([match, new Set(said).size]).toEqual([match, said.length]);
      withdrawals += said.filter((line) => line.endsWith("withdrawn")).length;
      const kept = await store.alertsOf(MATCH);
      const open = (kept.ok ? kept.value : []).filter(({ state }) => state !== "withdrawn");
      const [due] = watchesOf(wholeOf(right).view);
      expect([match, open.length]).toEqual([match, due?.episodes.length]);
      for (const { said: says } of open) expect(says.match).toEqual({ ...due?.match });
    }
    expect(withdrawals).toBeGreaterThan(50);
  }, 60_000);
});
