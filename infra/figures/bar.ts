import { type ClusteredMean, Z95 } from "./clustered-mean.ts";

/** A bar and whether it was kept; `says` has the figures it was judged by. */
export interface Bar {
  readonly kept: boolean;
  readonly says: string;
}

export const pct = (share: number, digits = 1): string => `${(100 * share).toFixed(digits)} %`;

/** What the ± of a bar is, for people. */
export const ERROR_WORDS =
  "± is 1.96 standard errors of the simulation, players as clusters; a rate is too high when it is above its bar by more.";

/** A share that may be at most `most`: kept unless it is above it by more than 1.96 standard errors. SPEC OP2. */
export const atMost = (what: string, { mean, se }: ClusteredMean, most: number): Bar => ({
  kept: mean - Z95 * se <= most,
  says: `${what}: ${pct(mean, 2)}, at most ${pct(most)} (± ${(100 * Z95 * se).toFixed(2)})`,
});

/** A share within so many points per hundred of the wanted one, without any allowance for chance. SPEC OP3. */
export const within = (what: string, value: number, wanted: number, points: number): Bar => ({
  kept: Math.abs(100 * (value - wanted)) <= points,
  says: `${what}: ${pct(value)}, within ${points} points of ${pct(wanted)} (${signed(100 * (value - wanted))})`,
});

/** With its sign, to a tenth. */
export const signed = (value: number): string => `${value < 0 ? "−" : "+"}${Math.abs(value).toFixed(1)}`;

/** What is printed of a bar. */
export const barLine = ({ kept, says }: Bar): string => `${kept ? "KEPT  " : "MISSED"} ${says}`;
