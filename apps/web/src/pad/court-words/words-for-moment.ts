import type { ScoreState } from "@courtloom/tennis";
import type { SaidOnCourt } from "./court-words-wire.ts";

/** What of the words is for this moment. */
export type MomentWords =
  | { readonly at: "change"; readonly sentence: string; readonly question: string }
  | { readonly at: "between"; readonly words: string };

/**
 * At a change of ends the sentence and the question; between points the plan's words, also at a change for which
 * nothing was agreed. Undefined where there is nothing to say, and before the first point: there ends do not change.
 */
export const wordsForMoment = (
  { words, sentence, question }: SaidOnCourt,
  score: Pick<ScoreState, "endsDue" | "over">,
  hasPoints: boolean,
): MomentWords | undefined => {
  if (score.over) return undefined;
  const agreed = sentence !== "" || question !== "";
  if (score.endsDue && hasPoints && agreed) return { at: "change", sentence, question };
  return words === "" ? undefined : { at: "between", words };
};
