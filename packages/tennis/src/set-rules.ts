import type { MatchFormat, TiebreakEnds, TiebreakServe } from "./format.ts";
import type { Pair } from "./pair.ts";

export interface TiebreakRules {
  readonly to: number;
  readonly winBy: 1 | 2;
  readonly ends: TiebreakEnds;
  readonly serve: TiebreakServe;
}

/** The rules of one set: games with perhaps a tie-break, or a tie-break in place of the set. */
export type SetRules =
  | {
      readonly kind: "games";
      readonly toWin: number;
      readonly lead: 1 | 2;
      readonly fixedGames: number | null;
      readonly tiebreakAt: number | null;
      readonly tiebreak: TiebreakRules;
    }
  | { readonly kind: "tiebreak"; readonly tiebreak: TiebreakRules };

/** Sets that win the match. */
export const setsToWin = (format: MatchFormat): number => Math.floor(format.sets / 2) + 1;

const isFinalSet = (format: MatchFormat, setsWon: Pair): boolean =>
  setsWon[0] === setsWon[1] && setsWon[0] === setsToWin(format) - 1;

/** The rules of the set that starts at `setsWon`. SPEC F3 to F11. */
export function rulesOfSet(format: MatchFormat, setsWon: Pair): SetRules {
  const final = isFinalSet(format, setsWon) ? format.finalSet : undefined;
  if (final?.kind === "matchTiebreak") return insteadOfSet(format, final.to, final.winBy);
  if (format.tieBreakOnly) return insteadOfSet(format, format.tieBreakOnly.to, format.tieBreakOnly.winBy);
  const ordinary = gamesSet(format);
  if (final?.kind === "advantage") return { ...ordinary, tiebreakAt: null };
  if (final?.kind !== "tiebreak") return ordinary;
  const tiebreak = { ...ordinary.tiebreak, to: final.tiebreakTo, winBy: final.winBy ?? 2 };
  return { ...ordinary, tiebreakAt: final.tiebreakAt, tiebreak };
}

const endsWithin = (format: MatchFormat): TiebreakEnds =>
  format.tbEnds ?? (format.ends === "setEnds" ? "none" : "six");

function insteadOfSet(format: MatchFormat, to: number, winBy: 1 | 2 | undefined): SetRules {
  const ends = format.matchTiebreakEnds ?? endsWithin(format);
  const serve = format.matchTiebreakServe ?? format.tbServe ?? "oneThenTwo";
  return { kind: "tiebreak", tiebreak: { to, winBy: winBy ?? 2, ends, serve } };
}

function gamesSet(format: MatchFormat): Extract<SetRules, { kind: "games" }> {
  return {
    kind: "games",
    toWin: format.gamesPerSet,
    lead: format.gameLead ?? 2,
    fixedGames: format.fixedGames ?? null,
    tiebreakAt: format.tiebreakAt,
    tiebreak: {
      to: format.tiebreakTo,
      winBy: format.tiebreakWinBy ?? 2,
      ends: endsWithin(format),
      serve: format.tbServe ?? "oneThenTwo",
    },
  };
}

/**
 * Whether the next game of a set at `games` is a tie-break. At the stated level, and at every second
 * level above it: a set that went on by mistake beyond 6-6 has its tie-break at 8-8. SPEC SC12.
 */
export function isTiebreakDue(rules: SetRules, games: Pair): boolean {
  if (rules.kind === "tiebreak") return true;
  const at = rules.tiebreakAt;
  return at !== null && games[0] === games[1] && games[0] >= at && (games[0] - at) % 2 === 0;
}

/** Whether `games` is a finished set without a tie-break. */
export function isSetWon(rules: SetRules, games: Pair): boolean {
  if (rules.kind === "tiebreak") return false;
  if (rules.fixedGames !== null) return games[0] + games[1] >= rules.fixedGames && games[0] !== games[1];
  const lead = Math.abs(games[0] - games[1]);
  return Math.max(games[0], games[1]) >= rules.toWin && lead >= rules.lead;
}
