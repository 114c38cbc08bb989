import type { ByPlayer } from "@courtloom/core";
import type { ScoreState } from "@courtloom/tennis";
import { sayCall } from "../say-score.ts";

/** Where in the match: "30–15 in 2–1", the server's figures first. */
export const sayPlace = (score: ScoreState, names: ByPlayer<string>): string => {
  const [a, b] = score.games;
  const games = score.server === "B" ? `${b}–${a}` : `${a}–${b}`;
  return score.matchTieBreak ? sayCall(score, names) : `${sayCall(score, names)} in ${games}`;
};
