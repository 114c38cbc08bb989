import { assert } from "@courtloom/core";
import type { MatchFormat } from "./format.ts";
import { createGameChances, type GameChances, type PointChance } from "./game-chances.ts";
import { createMatchChances } from "./match-chances.ts";
import { indexOf, LOVE } from "./pair.ts";
import { decidedByBell, type ScorePlace, standingAt } from "./score-place.ts";
import { openerIn } from "./set-chances.ts";
import type { TiebreakRules } from "./set-rules.ts";
import { isTiebreak, type Standing, serverNow } from "./standing.ts";
import { createTiebreakChances } from "./tiebreak-chances.ts";
import { winGame } from "./win-point.ts";

/** How much rests on one point: a difference of chances, in [0, 1], and the same for both sides. */
export interface PointImportance {
  /** P(win the match | the point is won) − P(win the match | it is lost). */
  readonly inMatch: number;
  /** The same for the game, or the tie-break, that the point belongs to. */
  readonly inGame: number;
}

export interface WinChances {
  /**
   * The chance that side A wins the match, in [0, 1]; side B's is what is missing from 1. 1 or 0 after the
   * end. `undefined` when it ended without a winner, and at the point that decides a game after the bell.
   */
  readonly ofA: (score: ScorePlace) => number | undefined;
  /** Of the point to be played at `score`. `undefined` after the end, and at the point named above. */
  readonly importance: (score: ScorePlace) => PointImportance | undefined;
}

/** A's chances around one point: of the game in play, and of the match once that game is won or lost. */
interface Stakes {
  readonly game: number;
  readonly gameIfA: number;
  readonly gameIfB: number;
  readonly matchIfA: number;
  readonly matchIfB: number;
}

/**
 * Chances of a match whose points are independent and won by the server with one chance per side: `pA`
 * when A serves, `pB` when B serves, both strictly between 0 and 1 (`clampServeChance` sees to it). Keeps
 * what it works out, so one object should serve all points of a match. No bell is foreseen: a timed match
 * is taken as played to its end; of a point after the bell that decides the match, all rests on it.
 * SPEC W1 to W9; source: C. Morris, The most important points in tennis, 1977.
 */
export function createWinChances(format: MatchFormat, pA: number, pB: number): WinChances {
  for (const p of [pA, pB]) assert(p > 0 && p < 1, `a chance on serve lies between 0 and 1, not at ${p}`);
  const pointChance: PointChance = (server) => (server === 0 ? pA : 1 - pB);
  const chancesOf = createChancesOf(format, pointChance);
  const atStart = (standing: Standing) => chancesOf(standing).at(LOVE, openerIn(standing));
  const matchChance = createMatchChances(format, atStart);
  const book = { format, firstServer: "A" } as const;

  function stakesAt(score: ScorePlace): Stakes | undefined {
    const standing = standingAt(format, score);
    if (standing === undefined) return undefined;
    const bell = decidedByBell(format, standing, score);
    if (bell === "game") return undefined;
    if (bell === "match") return allOnOnePoint(pointChance(serverNow(standing, "A")));
    const { points } = standing;
    const opener = openerIn(standing);
    const game = chancesOf(standing);
    return {
      game: game.at(points, opener),
      gameIfA: game.after(points, opener, 0),
      gameIfB: game.after(points, opener, 1),
      matchIfA: matchChance(winGame(book, standing, 0)),
      matchIfB: matchChance(winGame(book, standing, 1)),
    };
  }

  return {
    ofA(score) {
      if (score.over) return score.winner === null ? undefined : 1 - indexOf(score.winner);
      const stakes = stakesAt(score);
      if (stakes === undefined) return undefined;
      return stakes.game * stakes.matchIfA + (1 - stakes.game) * stakes.matchIfB;
    },
    importance(score) {
      const stakes = stakesAt(score);
      if (stakes === undefined) return undefined;
      const inGame = stakes.gameIfA - stakes.gameIfB;
      return { inMatch: inGame * (stakes.matchIfA - stakes.matchIfB), inGame };
    },
  };
}

const allOnOnePoint = (chance: number): Stakes => ({
  game: chance,
  gameIfA: 1,
  gameIfB: 0,
  matchIfA: 1,
  matchIfB: 0,
});

/** The chances of the game in play at a standing: one table for games, one for each kind of tie-break. */
function createChancesOf(format: MatchFormat, pointChance: PointChance) {
  const games = createGameChances(format.noAd, pointChance);
  const tiebreaks = new Map<string, GameChances>();

  function ofTiebreak(rules: TiebreakRules): GameChances {
    const key = `${rules.to} ${rules.winBy} ${rules.serve}`;
    const kept = tiebreaks.get(key) ?? createTiebreakChances(rules, pointChance);
    tiebreaks.set(key, kept);
    return kept;
  }

  return (standing: Standing): GameChances =>
    isTiebreak(standing) ? ofTiebreak(standing.rules.tiebreak) : games;
}
