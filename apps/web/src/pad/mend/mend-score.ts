import { otherSide, type Side } from "@courtloom/core";
import type { Fact, MatchView } from "@courtloom/match-log";
import { viewWith } from "./preview-change.ts";

/** The score after a game that nobody charted, as a person states it: the game in play went to `winner`. SPEC PD83. */
export const missedGame = (view: MatchView, winner: Side, epoch: number): Fact => {
  const given = { kind: "PenaltyGiven", penalty: "game", against: otherSide(winner) } as const;
  const { sets, games, over } = viewWith(view, [given], epoch).score;
  const score = over ? { sets } : { sets, games, points: [0, 0] as const };
  return { kind: "ScoreStated", score, missed: true };
};
