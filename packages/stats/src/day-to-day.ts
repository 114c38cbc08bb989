import { DAY_TO_DAY, type PastMatch } from "./beta-posterior.ts";

const NARROWEST = 20;
const WIDEST = 200;

interface Sums {
  betweenSquares: number;
  betweenDegrees: number;
  withinSquares: number;
  withinDegrees: number;
  sizes: number;
}

const addPlayer = (sums: Sums, matches: readonly PastMatch[]): void => {
  const played = matches.filter((match) => match.n > 0);
  const attempts = played.reduce((sum, { n }) => sum + n, 0);
  if (played.length < 2) return;
  const mean = played.reduce((sum, { x }) => sum + x, 0) / attempts;
  for (const { x, n } of played) {
    const p = x / n;
    sums.betweenSquares += n * (p - mean) ** 2;
    sums.withinSquares += n * p * (1 - p);
  }
  sums.betweenDegrees += played.length - 1;
  sums.withinDegrees += attempts - played.length;
  sums.sizes += attempts - played.reduce((sum, { n }) => sum + n * n, 0) / attempts;
};

/**
 * How alike attempts of one day are (ρ, the intraclass correlation), from the matches of each of several players: one-way analysis of
 * variance of matches within players, pooled over players,
 * ρ = (MSB − MSW) / (MSB + (n₀ − 1)·MSW), n₀ = Σ(N − Σn²/N) / Σ(k − 1). `undefined` when nothing can be said: no player with two
 * matches, no match with two attempts, or a rate without any spread. May be below 0. SPEC S21; source: Ridout, Demétrio and Firth 1999.
 */
export const sameDayCorrelation = (players: readonly (readonly PastMatch[])[]): number | undefined => {
  const sums: Sums = { betweenSquares: 0, betweenDegrees: 0, withinSquares: 0, withinDegrees: 0, sizes: 0 };
  for (const matches of players) addPlayer(sums, matches);
  if (sums.betweenDegrees === 0 || sums.withinDegrees === 0) return undefined;
  const between = sums.betweenSquares / sums.betweenDegrees;
  const within = sums.withinSquares / sums.withinDegrees;
  const size = sums.sizes / sums.betweenDegrees;
  const total = between + (size - 1) * within;
  return total > 0 ? (between - within) / total : undefined;
};

/**
 * The academy's day-to-day spread m = 1/ρ − 1, kept within 20 (days differ much) and 200 (hardly); 200 where days do not differ at all,
 * 60 where nothing can be said. SPEC S21.
 */
export const dayToDaySpread = (players: readonly (readonly PastMatch[])[]): number => {
  const correlation = sameDayCorrelation(players);
  if (correlation === undefined) return DAY_TO_DAY;
  if (correlation <= 0) return WIDEST;
  return Math.min(WIDEST, Math.max(NARROWEST, 1 / correlation - 1));
};
