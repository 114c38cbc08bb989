import type { CusumScores } from "./cusum-scores.ts";

/** All that a watch carries from one attempt to the next; plain data. */
export interface CusumState {
  /** Evidence in score points, 0 to the threshold. */
  readonly c: number;
  /** Attempts seen. */
  readonly attempts: number;
  /** Attempts since the evidence was last 0; 0 while it is 0. */
  readonly runAttempts: number;
  /** Events among those. */
  readonly runEvents: number;
  /** Raised, and not cleared since. */
  readonly alerting: boolean;
}

/** What an attempt changed. */
export type CusumChange = "raised" | "cleared" | "none";

export interface CusumStep {
  readonly state: CusumState;
  readonly change: CusumChange;
}

/** Before the first attempt. */
export const NO_EVIDENCE: CusumState = {
  c: 0,
  attempts: 0,
  runAttempts: 0,
  runEvents: 0,
  alerting: false,
};

/** An alert clears when the evidence is at or below this: half the threshold, rounded down. SPEC S12. */
export const clearLevel = (threshold: number): number => Math.floor(threshold / 2);

/**
 * One attempt: C = min(H, C + up) after an event, max(0, C − down) after none. Raises when C reaches `threshold`, clears at half of it,
 * and raises again only after clearing. `threshold` is the one in force at this attempt (an integer ≥ 1); it may rise from one attempt
 * to the next and C carries over. SPEC S11, S12.
 */
export const stepCusum = (
  before: CusumState,
  event: boolean,
  scores: CusumScores,
  threshold: number,
): CusumStep => {
  const c = event ? Math.min(threshold, before.c + scores.up) : Math.max(0, before.c - scores.down);
  const raised = !before.alerting && c >= threshold;
  const cleared = before.alerting && c <= clearLevel(threshold);
  const state: CusumState = {
    c,
    attempts: before.attempts + 1,
    runAttempts: c === 0 ? 0 : before.runAttempts + 1,
    runEvents: c === 0 ? 0 : before.runEvents + (event ? 1 : 0),
    alerting: raised || (before.alerting && !cleared),
  };
  return { state, change: raised ? "raised" : cleared ? "cleared" : "none" };
};

/**
 * Since when: the number (from 1) of the first attempt after the evidence was last 0, so that "x of n since attempt k" are
 * `runEvents`, `runAttempts` and this. `undefined` while there is no evidence. SPEC S13.
 */
export const sinceAttempt = ({ attempts, runAttempts }: CusumState): number | undefined =>
  runAttempts === 0 ? undefined : attempts - runAttempts + 1;
