import type { MatchFormat } from "./format.ts";
import type { Pair, SideIndex } from "./pair.ts";

/** One point decides the game at `points`: level at deuce, and it is the deuce the format names. SPEC SC3. */
export function isGameDeciding(noAd: MatchFormat["noAd"], points: Pair): boolean {
  if (noAd === false || points[0] !== points[1] || points[0] < 3) return false;
  const deuce = points[0] - 2;
  return deuce >= (noAd === true ? 1 : noAd);
}

/** Whether the side at `winner` wins the game with the next point. */
export function winsGame(noAd: MatchFormat["noAd"], before: Pair, winner: SideIndex): boolean {
  if (isGameDeciding(noAd, before)) return true;
  const won = before[winner] + 1;
  return won >= 4 && won - before[winner === 0 ? 1 : 0] >= 2;
}

const CALLS = ["0", "15", "30", "40"] as const;

/** The call, server's score first. SPEC SC2. */
export function callOfGame(noAd: MatchFormat["noAd"], server: number, receiver: number): string {
  if (isGameDeciding(noAd, [server, receiver])) return "deciding";
  if (server >= 3 && receiver >= 3) {
    if (server === receiver) return "deuce";
    return server > receiver ? "ad-in" : "ad-out";
  }
  return `${CALLS[server]}-${CALLS[receiver]}`;
}
