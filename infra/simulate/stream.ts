import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** One actor's random numbers. What one actor draws never moves another one's. */
export interface Stream {
  /** A whole number from `from` to `to`, both included. */
  readonly int: (from: number, to: number) => number;
  /** In [0, 1). */
  readonly float: () => number;
  readonly chance: (share: number) => boolean;
  /** `items` must not be empty. */
  readonly pick: <T>(items: readonly T[]) => T;
}

/** FNV-1a, 32 bit: spreads neighbouring seeds and names over the generator's whole range. */
const mix = (seed: number, name: string): number => {
  let hash = 0x811c9dc5;
  for (const character of `${seed}/${name}`) {
    hash ^= character.codePointAt(0) ?? 0;
    hash = Math.imul(hash, 0x01000193);
  }
  return hash | 0;
};

/** The stream of the actor `name` in the schedule `seed`; the same two give the same numbers. */
export const createStream = (seed: number, name: string): Stream => {
  const generator = xoroshiro128plus(mix(seed, name));
  const int = (from: number, to: number): number => uniformInt(generator, from, to);
  return {
    int,
    float: () => uniformFloat64(generator),
    chance: (share) => uniformFloat64(generator) < share,
    pick: (items) => {
      const item = items[int(0, items.length - 1)];
      if (item === undefined) throw new Error("there is nothing to pick from");
      return item;
    },
  };
};
