import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { academyLogits } from "./academy-logits.ts";
import { type ByChoice, DEFAULT_SPREAD, fitChoices, logPosterior, priorWeights } from "./choice-fit.ts";
import { pointsLost, worthBySituation } from "./choice-worth.ts";
import { seeded } from "./testing/seeded.ts";
import { pool, simulateAcademy } from "./testing/simulated-academy.ts";

interface Case {
  readonly id: string;
  readonly tolerance: number;
  readonly input: {
    readonly kind: "hierarchical_shot_value";
    readonly academy_logit: readonly ByChoice<number>[];
    readonly won_n: readonly ByChoice<readonly [number, number]>[];
    readonly sd: { readonly player: number; readonly situation: number; readonly direction: number };
    readonly plan: readonly (0 | 1)[];
    readonly off_plan_counts: readonly number[];
  };
  readonly expected: {
    readonly theta: readonly number[];
    readonly cells: readonly { p_cross: number; p_dtl: number; diff: number; se_diff: number }[];
    readonly points_lost: number;
    readonly se_points_lost: number;
    readonly lo90: number;
    readonly hi90: number;
  };
}

const all = (
  JSON.parse(readFileSync(new URL("../../../shared/vectors/shot-value.json", import.meta.url), "utf8")) as {
    cases: readonly (Case | { readonly input: { readonly kind: "cell_shrink" } })[];
  }
).cases;
// The other kind of the file, cell_shrink, shrinks each choice's rate by itself, which makes every strong player's rarer choice look
// dear; the product does not do that, so those cases are not its.
const cases = all.filter((c): c is Case => c.input.kind === "hierarchical_shot_value");
const near = (value: number | undefined, wanted: number | undefined, tolerance: number): void =>
  expect(Math.abs((value ?? Number.NaN) - (wanted ?? Number.NaN))).toBeLessThanOrEqual(tolerance);

const dataOf = ({ input }: Case) => ({
  academyLogits: input.academy_logit,
  counts: input.won_n.map(
    ([first, second]) =>
      [
        { won: first[0], n: first[1] },
        { won: second[0], n: second[1] },
      ] as const,
  ),
});
const lostOf = ({ input }: Case) =>
  input.plan.map((planned, s) => ({ planned, count: input.off_plan_counts[s] ?? 0 }));

describe("what a choice is worth", () => {
  it("has every case of the hierarchical fit", () => {
    expect(cases).toHaveLength(2);
    expect(all.length - cases.length).toBe(3);
  });

  it.each(cases)("[S30, S32, S33] $id within its tolerance", (given) => {
    const { input, expected, tolerance } = given;
    const fit = fitChoices(dataOf(given), {
      player: input.sd.player,
      situation: input.sd.situation,
      choice: input.sd.direction,
    });
    expect(fit.deviations).toHaveLength(expected.theta.length);
    expected.theta.forEach((wanted, i) => {
      near(fit.deviations[i], wanted, tolerance);
    });
    worthBySituation(fit).forEach(({ wins, difference }, s) => {
      const cell = expected.cells[s];
      near(wins[0], cell?.p_cross, tolerance);
      near(wins[1], cell?.p_dtl, tolerance);
      near(difference.value, cell?.diff, tolerance);
      near(difference.se, cell?.se_diff, tolerance);
    });
    const lost = pointsLost(fit, lostOf(given));
    near(lost.value, expected.points_lost, tolerance);
    near(lost.se, expected.se_points_lost, tolerance);
    near(lost.low, expected.lo90, tolerance);
    near(lost.high, expected.hi90, tolerance);
    expect(lost.distinguishable).toBe(expected.lo90 > 0);
  });

  it("[S32, S33] tells apart only what an interval without 0 tells apart", () => {
    const academy = [
      [0, 0],
      [1, -1],
    ] as const;
    const none = { won: 0, n: 0 };
    const fit = fitChoices({
      academyLogits: academy,
      counts: [
        [none, none],
        [none, none],
      ],
    });
    expect(worthBySituation(fit).map(({ difference }) => difference.distinguishable)).toEqual([false, true]);
    const nothing = pointsLost(fit, [
      { planned: 0, count: 0 },
      { planned: 0, count: 0 },
    ]);
    expect([nothing.value, nothing.se, nothing.distinguishable]).toEqual([0, 0, false]);
    const other = pointsLost(fit, [
      { planned: 0, count: 0 },
      { planned: 1, count: 3 },
    ]);
    expect(other.high).toBeLessThan(0);
    expect(other.distinguishable).toBe(true);
  });

  it("[S34] widens by the root of the choices per point, and never narrows", () => {
    const [first] = cases;
    expect(first).toBeDefined();
    if (!first) return;
    const fit = fitChoices(dataOf(first));
    const plain = worthBySituation(fit);
    const wider = worthBySituation(fit, [2.25, 1, 0.5]);
    const factors = wider.map((w, s) => w.difference.se / (plain[s]?.difference.se ?? Number.NaN));
    factors.forEach((factor, s) => {
      expect(factor).toBeCloseTo(s === 0 ? 1.5 : 1, 12);
    });
    const lost = pointsLost(fit, lostOf(first), [4, 4, 4]);
    expect(lost.se).toBeCloseTo(2 * pointsLost(fit, lostOf(first)).se, 12);
    expect(lost.value).toBe(pointsLost(fit, lostOf(first)).value);
  });

  it("[S30] stands at the top, also where every point was won and with 24 situations", () => {
    const counts = Array.from(
      { length: 24 },
      (_, s) =>
        [
          { won: 300, n: 300 },
          { won: 0, n: s },
        ] as const,
    );
    const data = { academyLogits: counts.map(() => [0.1, -0.2] as const), counts };
    const fit = fitChoices(data);
    const weights = priorWeights(24, DEFAULT_SPREAD);
    const top = logPosterior(data, weights, fit.deviations);
    fit.deviations.forEach((_, i) => {
      for (const by of [-1e-3, 1e-3]) {
        const moved = fit.deviations.map((x, j) => (i === j ? x + by : x));
        expect(logPosterior(data, weights, moved)).toBeLessThan(top);
      }
    });
  });

  it("[S31] smooths the academy's logits by half a point", () => {
    const pair = [
      { won: 0, n: 0 },
      { won: 3, n: 3 },
    ] as const;
    expect(academyLogits([pair])).toEqual([[0, Math.log(7)]]);
  });

  it("[S30, S31, S32] finds known worths nearer than the raw difference or the academy's, with honest intervals", () => {
    const random = seeded(20261125);
    const sums = { fit: 0, raw: 0, academy: 0, covered: 0, count: 0 };
    for (let academy = 0; academy < 6; academy++) {
      const players = simulateAcademy(random, 60, 6, DEFAULT_SPREAD);
      const logits = academyLogits(pool(players));
      for (const { counts, differences } of players) {
        const worth = worthBySituation(fitChoices({ academyLogits: logits, counts }));
        const level = worthBySituation(
          fitChoices({ academyLogits: logits, counts: counts.map(() => NOTHING) }),
        );
        differences.forEach((truth, s) => {
          const [first, second] = counts[s] ?? NOTHING;
          const { value, low, high } = worth[s]?.difference ?? { value: NaN, low: NaN, high: NaN };
          sums.fit += (value - truth) ** 2;
          sums.raw += (first.won / first.n - second.won / second.n - truth) ** 2;
          sums.academy += ((level[s]?.difference.value ?? Number.NaN) - truth) ** 2;
          sums.covered += low <= truth && truth <= high ? 1 : 0;
          sums.count += 1;
        });
      }
    }
    const rmse = (sum: number): number => 100 * Math.sqrt(sum / sums.count);
    expect(rmse(sums.fit)).toBeLessThan(5.7);
    expect(rmse(sums.academy)).toBeGreaterThan(rmse(sums.fit) + 0.5);
    expect(rmse(sums.raw)).toBeGreaterThan(2 * rmse(sums.fit));
    expect(sums.covered / sums.count).toBeGreaterThan(0.87);
    expect(sums.covered / sums.count).toBeLessThan(0.92);
  });
});

const NOTHING = [
  { won: 0, n: 0 },
  { won: 0, n: 0 },
] as const;
