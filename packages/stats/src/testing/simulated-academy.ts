import { type ByChoice, CHOICE_SIGNS, type FitSpread, type WonOf } from "../choice-fit.ts";
import { drawCount, drawNormal } from "./seeded.ts";

export interface SimulatedPlayer {
  readonly counts: readonly ByChoice<WonOf>[];
  /** True chance of the first choice minus the second, by situation. */
  readonly differences: readonly number[];
  /** True distance from the academy in all that the player does, in logits. */
  readonly level: number;
}

const logistic = (x: number): number => 1 / (1 + Math.exp(-x));
const between = (random: () => number, low: number, high: number): number =>
  low + Math.floor(random() * (high - low + 1));

/** Players of one academy whose worths are known: 20–200 points with the first choice, 2–60 with the second, per situation. */
export const simulateAcademy = (
  random: () => number,
  playerCount: number,
  situationCount: number,
  spread: FitSpread,
): readonly SimulatedPlayer[] => {
  const academy = Array.from({ length: situationCount }, () => {
    const kept = drawNormal(random, 0.25);
    return [kept, kept - 0.25 + drawNormal(random, 0.2)] as const;
  });
  return Array.from({ length: playerCount }, () => {
    const a = drawNormal(random, spread.player);
    const rates = academy.map((pair) => {
      const b = drawNormal(random, spread.situation);
      const c = drawNormal(random, spread.choice);
      return pair.map((mu, d) => logistic(mu + a + b + (CHOICE_SIGNS[d === 0 ? 0 : 1] ?? 0) * c));
    });
    const counts = rates.map(([first = 0, second = 0]) => {
      const n = [between(random, 20, 200), between(random, 2, 60)] as const;
      return [
        { won: drawCount(random, n[0], first), n: n[0] },
        { won: drawCount(random, n[1], second), n: n[1] },
      ] as const;
    });
    return { counts, differences: rates.map(([first = 0, second = 0]) => first - second), level: a };
  });
};

/** The points of all players together. */
export const pool = (players: readonly SimulatedPlayer[]): readonly ByChoice<WonOf>[] => {
  const sum = (s: number, d: 0 | 1): WonOf =>
    players.reduce(
      (total, { counts }) => ({
        won: total.won + (counts[s]?.[d].won ?? 0),
        n: total.n + (counts[s]?.[d].n ?? 0),
      }),
      { won: 0, n: 0 },
    );
  return (players[0]?.counts ?? []).map((_, s) => [sum(s, 0), sum(s, 1)] as const);
};
