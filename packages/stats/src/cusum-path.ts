import { type CusumChange, type CusumState, NO_EVIDENCE, stepCusum } from "./cusum.ts";
import type { CusumScores } from "./cusum-scores.ts";

/** One attempt as a watch sees it, with the scores and the threshold in force at it. */
export interface CusumAttempt {
  readonly event: boolean;
  readonly scores: CusumScores;
  readonly threshold: number;
}

/** What changed at which attempt, numbered from 1. */
export interface CusumTurn {
  readonly attempt: number;
  readonly change: Exclude<CusumChange, "none">;
}

export interface CusumPath {
  /** The state after each attempt; empty without attempts. */
  readonly states: readonly CusumState[];
  readonly turns: readonly CusumTurn[];
}

/**
 * The whole path of a watch over a list of attempts: a pure function of the list, so that after a correction the corrected list is
 * replayed and an alert that its evidence has left is gone. SPEC S11 to S13.
 */
export const cusumPath = (attempts: readonly CusumAttempt[]): CusumPath => {
  const states: CusumState[] = [];
  const turns: CusumTurn[] = [];
  let state = NO_EVIDENCE;
  for (const { event, scores, threshold } of attempts) {
    const step = stepCusum(state, event, scores, threshold);
    state = step.state;
    states.push(state);
    if (step.change !== "none") turns.push({ attempt: state.attempts, change: step.change });
  }
  return { states, turns };
};
