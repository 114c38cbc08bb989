import { applyScore, type ScoreError } from "@courtloom/tennis";
import { freshProgress } from "./fresh-progress.ts";
import { replayFact } from "./replay.ts";
import { scoreEventOf } from "./score-events.ts";
import type { MatchView } from "./view.ts";

/**
 * Why the score cannot take the fact with this id in its place, in the scorer's own words. `undefined` where it
 * takes it, where the fact is voided, does nothing to the score, or is not there. Costs one replay. SPEC L26.
 */
export const scoreRefusal = (view: MatchView, id: string): ScoreError | undefined => {
  const progress = freshProgress(view.opened);
  if (!progress.ok) return undefined;
  const { facts } = view.trail;
  const byId = new Map(facts.map((fact) => [fact.id, fact]));
  for (const fact of facts) {
    if (fact.id !== id) {
      replayFact(progress.value, fact, byId);
      continue;
    }
    const event = fact.voided ? undefined : scoreEventOf(fact.fact);
    const applied = event && applyScore(progress.value.board, event);
    return applied?.ok === false ? applied.error : undefined;
  }
  return undefined;
};
