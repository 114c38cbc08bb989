/**
 * How a bench ended: the bar was kept or missed; nothing was to be judged; the machine was too noisy to judge;
 * or the bench could not be run at all.
 */
export type Verdict = "kept" | "missed" | "printed" | "noisy" | "impossible";

export interface Outcome {
  readonly name: string;
  readonly verdict: Verdict;
}

/** A bench prints its figures while it runs; what comes back decides the exit code. */
export type Bench = () => Promise<readonly Outcome[]>;
