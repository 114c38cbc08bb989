import { figuresOf, freezeOpening, STARTER_PLAN } from "@courtloom/decisions";
import { foldLog, type LoggedEntry, type PointCharted } from "@courtloom/match-log";
import { describe, expect, it } from "vitest";
import { playMatch } from "./play-match.ts";
import { createRandom } from "./random.ts";
import type { Temper } from "./roster.ts";
import { DEMO_FORMAT } from "./season.ts";

const SEED = 20261125;

const entriesOf = (temper: Temper, seed: number, own = true) =>
  playMatch(createRandom(seed), {
    format: DEMO_FORMAT,
    firstServer: "A",
    sides: { A: { temper, level: 2, own }, B: { temper: "steady", level: 2, own: false } },
    startMs: 0,
  });

const shotsOf = (temper: Temper, seed: number, own = true) =>
  entriesOf(temper, seed, own).flatMap(({ body }) => (body as PointCharted).point.shots);

/** Plan kept, and off plan of line balls, over some matches of side A. */
const planFigures = (temper: Temper) => {
  const sums = { kept: { x: 0, n: 0 }, offPlan: { x: 0, n: 0 }, lineBalls: 0 };
  for (let seed = SEED; seed < SEED + 8; seed += 1) {
    const view = foldLog(logOf(temper, seed));
    const figures = view.ok ? figuresOf(view.value).A : undefined;
    if (!figures) throw new Error("the match is charted");
    const { planKept, lineOffPlan, lineMissed } = figures;
    sums.kept = { x: sums.kept.x + planKept.x, n: sums.kept.n + planKept.n };
    sums.offPlan = { x: sums.offPlan.x + lineOffPlan.x, n: sums.offPlan.n + lineOffPlan.n };
    sums.lineBalls += lineMissed.n;
  }
  return sums;
};

const logOf = (temper: Temper, seed: number): LoggedEntry[] => {
  const body = freezeOpening({
    matchId: "m",
    format: DEMO_FORMAT,
    firstServer: "A",
    players: {
      A: { playerId: "a", hand: "right", own: true },
      B: { playerId: "b", hand: "unknown", own: false },
    },
    doubles: false,
    coachingMode: "practice",
    plans: { A: { planId: "plan", version: 1, rules: STARTER_PLAN }, B: null },
    past: { own: { A: [], B: [] }, academy: [] },
  });
  const opening = { v: 1, id: "o", n: 1, atMs: 0, wallMs: 0, body } as const;
  return [
    { pos: 1, laneId: "desk", epoch: 0, entry: opening },
    ...entriesOf(temper, seed).map((entry, i) => ({ pos: i + 2, laneId: "l", epoch: 1, entry })),
  ];
};

describe("what the demo's chartists answer", () => {
  it("[DM8] is what the plan asks, of own players' balls alone, a few answers left out", () => {
    const shots = shotsOf("steady", SEED);
    const [own, other] = [shots.filter((s) => s.striker === "A"), shots.filter((s) => s.striker === "B")];
    for (const ask of ["ballHeight", "ballTime", "opponent"] as const) {
      const share = own.filter((shot) => shot[ask] !== undefined).length / own.length;
      expect(share).toBeGreaterThan(0.88);
      expect(share).toBeLessThan(1);
      expect(other.filter((shot) => shot[ask] !== undefined)).toEqual([]);
    }
  });

  it("[DM8] never moves the play", () => {
    const bare = (own: boolean) =>
      shotsOf("brave", SEED, own).map(({ ballHeight: _, ballTime: __, opponent: ___, ...shot }) => shot);
    expect(bare(true)).toEqual(bare(false));
  });

  it("[DM8] lets the starter plan judge nearly every line ball, and tells who keeps to it", () => {
    const [steady, impatient] = [planFigures("steady"), planFigures("impatient")];
    const share = ({ x, n }: { readonly x: number; readonly n: number }) => x / n;
    expect(steady.offPlan.n).toBeGreaterThan(0.75 * steady.lineBalls);
    expect(impatient.offPlan.n).toBeGreaterThan(0.75 * impatient.lineBalls);
    expect(share(impatient.offPlan)).toBeGreaterThan(share(steady.offPlan) + 0.15);
    expect(share(steady.kept)).toBeGreaterThan(share(impatient.kept));
    expect(share(steady.kept)).toBeGreaterThan(0.65);
  });
});
