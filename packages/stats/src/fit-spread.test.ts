import { describe, expect, it } from "vitest";
import { academyLogits } from "./academy-logits.ts";
import { type ByChoice, DEFAULT_SPREAD, fitChoices, type WonOf } from "./choice-fit.ts";
import { fitSpread, logMarginal, SPREAD_FLOOR } from "./fit-spread.ts";
import { seeded } from "./testing/seeded.ts";
import { pool, simulateAcademy } from "./testing/simulated-academy.ts";

/** ln ∫ likelihood · prior over a, b and c of one situation, by the midpoint rule on a grid. */
const byQuadrature = (
  academy: ByChoice<number>,
  counts: ByChoice<WonOf>,
  sds: readonly [number, number, number],
): number => {
  const [alone, half] = [41, 5];
  const step = (2 * half) / alone;
  const nodes = Array.from({ length: alone }, (_, i) => -half + step * (i + 0.5));
  const density = nodes.map((z) => (step * Math.exp(-0.5 * z * z)) / Math.sqrt(2 * Math.PI));
  const logistic = (x: number): number => 1 / (1 + Math.exp(-x));
  let sum = 0;
  nodes.forEach((za, i) => {
    nodes.forEach((zb, j) => {
      nodes.forEach((zc, k) => {
        const level = sds[0] * za + sds[1] * zb;
        const like = ([0, 1] as const).map((d) => {
          const p = logistic(academy[d] + level + (d - 0.5) * sds[2] * zc);
          return p ** counts[d].won * (1 - p) ** (counts[d].n - counts[d].won);
        });
        const weight = (density[i] ?? 0) * (density[j] ?? 0) * (density[k] ?? 0);
        sum += weight * (like[0] ?? 0) * (like[1] ?? 0);
      });
    });
  });
  return Math.log(sum);
};

describe("spread between an academy's players", () => {
  it("[S35] is judged by a marginal likelihood that agrees with the integral", () => {
    const academy = [0.2, -0.3] as const;
    const counts = [
      { won: 35, n: 60 },
      { won: 4, n: 15 },
    ] as const;
    const spreads = [
      { player: 0.3, situation: 0.15, choice: 0.25 },
      { player: 0.6, situation: 0.3, choice: 0.7 },
    ] as const;
    const [one, other] = spreads.map((spread) => {
      const laplace = logMarginal(fitChoices({ academyLogits: [academy], counts: [counts] }, spread), spread);
      return laplace - byQuadrature(academy, counts, [spread.player, spread.situation, spread.choice]);
    });
    expect(one).toBeCloseTo(0, 1);
    expect(other).toBeCloseTo(one ?? Number.NaN, 1);
  });

  it("[S35] is the default below 15 players with points", () => {
    const players = simulateAcademy(seeded(7), 14, 3, { player: 0.9, situation: 0.9, choice: 0.9 });
    const nobody =
      players[0]?.counts.map(
        () =>
          [
            { won: 0, n: 0 },
            { won: 0, n: 0 },
          ] as const,
      ) ?? [];
    const all = [...players.map((p) => p.counts), nobody, nobody];
    expect(fitSpread(academyLogits(pool(players)), all)).toEqual(DEFAULT_SPREAD);
  });

  it("[S35] finds a known spread", () => {
    const truth = { player: 0.45, situation: 0.25, choice: 0.4 };
    const players = simulateAcademy(seeded(11), 60, 6, truth);
    const found = fitSpread(
      academyLogits(pool(players)),
      players.map((p) => p.counts),
    );
    for (const part of ["player", "situation", "choice"] as const) {
      expect(found[part] / truth[part]).toBeGreaterThan(0.75);
      expect(found[part] / truth[part]).toBeLessThan(1.33);
    }
  });

  it("[S35] is never below its floor, where players do not differ at all", () => {
    const half = [
      { won: 30, n: 60 },
      { won: 12, n: 24 },
    ] as const;
    const counts = Array.from({ length: 20 }, () => [half, half]);
    const logits = [
      [0, 0],
      [0, 0],
    ] as const;
    expect(fitSpread(logits, counts)).toEqual(SPREAD_FLOOR);
  });
});
