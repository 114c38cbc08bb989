/** Past matches that a watch's usual rate may stand on. */
export const PASTS = [0, 5, 20, 60] as const;
export type Past = (typeof PASTS)[number];

/** One way of simulating matches of players. */
export interface Condition {
  readonly past: Past;
  /** Watches of a player, which share the player's error rate. */
  readonly watches: 1 | 2 | 4;
  /**
   * `thirty`: watches made for thirty attempts, and every match has thirty; `own`: watches made for what the player's
   * past says, and matches as long as the past ones.
   */
  readonly attempts: "thirty" | "own";
  /** What the odds of an event are multiplied by in each series of matches; 1 where nothing is wrong. */
  readonly oddsRatios: readonly number[];
}

export const nameOf = ({ past, watches, attempts }: Condition): string =>
  `${past} past matches, ${watches} watched, ${attempts}`;
