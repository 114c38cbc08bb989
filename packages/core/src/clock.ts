/** Time is passed in, so that levels 0 to 4 stay pure and a simulated clock can drive everything. */
export interface Clock {
  /** Milliseconds since 1970, as this device believes them; may jump. */
  readonly wallMs: () => number;
  /** Milliseconds since an arbitrary start; never goes backwards. */
  readonly monotonicMs: () => number;
}
