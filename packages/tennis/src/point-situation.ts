import { type ByPlayer, byPlayer, type Side } from "@courtloom/core";
import { applyScore } from "./apply-score.ts";
import type { ScoreBoard } from "./score-board.ts";

/** What the next point would win for a side. `break` is a game won against the server; a tie-break has none. */
export interface Stake {
  readonly game: boolean;
  readonly break: boolean;
  readonly set: boolean;
  readonly match: boolean;
}

const NOTHING: Stake = { game: false, break: false, set: false, match: false };

/** What each side would win with the next point, found by trying it. Nothing after the end. SPEC SC38. */
export const pointSituation = (board: ScoreBoard): ByPlayer<Stake> =>
  byPlayer((side) => stakeOf(board, side));

function stakeOf(board: ScoreBoard, side: Side): Stake {
  const tried = applyScore(board, { type: "point", winner: side });
  if (!tried.ok) return NOTHING;
  const { standing, state } = tried.value;
  const game = standing.gamesPlayed > board.standing.gamesPlayed;
  return {
    game,
    break: game && !board.state.tieBreak && board.state.server !== side,
    set: state.sets.length > board.state.sets.length,
    match: state.over && state.winner === side,
  };
}

/** The next point decides a game, a tie-break or the match whoever wins it, and the receiver chooses the half. */
export const isDecidingPoint = (board: ScoreBoard): boolean => board.state.side === "receiver-chooses";
