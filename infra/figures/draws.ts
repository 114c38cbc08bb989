import { createStream } from "../simulate/stream.ts";

/** Numbers in (0, 1) of one thing that is drawn; what one draws never moves another's. */
export type Draws = () => number;

/** The draws of `name` in the run `seed`; the same two give the same numbers on every machine. */
export const drawsOf = (seed: number, name: string): Draws => {
  const { float } = createStream(seed, name);
  return () => {
    // Quantiles and logarithms of exactly 0 are not finite.
    let drawn = float();
    while (drawn === 0) drawn = float();
    return drawn;
  };
};

/** A whole number from `from` to `to`, both included, each alike. */
export const drawWhole = (draws: Draws, from: number, to: number): number =>
  from + Math.floor(draws() * (to - from + 1));
