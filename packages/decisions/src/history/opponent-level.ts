import { otherSide, type Side } from "@courtloom/core";
import type { MatchOpened } from "@courtloom/match-log";

export const OPPONENT_LEVELS = ["similar", "stronger", "weaker", "notKnown"] as const;
/** How strong the opponent was beside the player, by the academy's own scale on the match's date. */
export type OpponentLevel = (typeof OPPONENT_LEVELS)[number];

/** Levels that differ by no more than this are similar; 1 is the strongest level, a greater number is weaker. */
const SIMILAR = 1;

/**
 * The opponent's level beside the player's, as frozen when the match was opened: a level that is changed today
 * changes no past match. Not known where either had none. SPEC HF3.
 */
export const opponentLevelOf = ({ players }: Pick<MatchOpened, "players">, side: Side): OpponentLevel => {
  const [own, other] = [players[side].level, players[otherSide(side)].level];
  if (own === undefined || other === undefined) return "notKnown";
  if (Math.abs(other - own) <= SIMILAR) return "similar";
  return other < own ? "stronger" : "weaker";
};
