import { type ScoreState, scoreLine } from "@courtloom/tennis";

/** A score in one line, side A first: "6–4 3–2 30–15". */
export const scoreWords = (score: ScoreState): string => scoreLine(score, "A").replaceAll("-", "–");

/** Whether two scores read the same. */
export const isSameScore = (a: ScoreState, b: ScoreState): boolean =>
  scoreWords(a) === scoreWords(b) && a.server === b.server;
