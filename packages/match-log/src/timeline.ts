import { assert } from "@courtloom/core";
import type { ScoreState } from "@courtloom/tennis";
import { freshProgress } from "./fresh-progress.ts";
import { replayFact } from "./replay.ts";
import type { TrailFact } from "./trail.ts";
import type { MatchView, SetAsideReason } from "./view.ts";

/** A fact in its place, with the score before and after it. The same score twice where it changed nothing. */
export interface TimelineFact extends TrailFact {
  readonly before: ScoreState;
  readonly after: ScoreState;
  /** Why it does not count, where it does not. A voided fact has `voided` and no reason. */
  readonly setAside?: SetAsideReason;
}

/**
 * Every fact of a match in its place, voided ones too, for whoever looks for the one to mend. Costs one replay;
 * empty before the first fact. SPEC L11.
 */
export const timelineOf = (view: MatchView): readonly TimelineFact[] => {
  const fresh = freshProgress(view.opened);
  assert(fresh.ok, "the opening was folded before");
  const progress = fresh.value;
  const { facts } = view.trail;
  const byId = new Map(facts.map((fact) => [fact.id, fact]));
  return facts.map((fact) => {
    const before = progress.board.state;
    const asideBefore = progress.setAside.length;
    replayFact(progress, fact, byId);
    const reason = progress.setAside[asideBefore]?.reason;
    return { ...fact, before, after: progress.board.state, ...(reason ? { setAside: reason } : {}) };
  });
};
