import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** A seeded stream of numbers: the same seed gives the same academy, season and day. */
export interface Random {
  /** In [0, 1). */
  readonly unit: () => number;
  /** Whole, both ends included. */
  readonly whole: (low: number, high: number) => number;
  readonly chance: (p: number) => boolean;
  /** Around 0 with standard deviation 1, cut at ±3. */
  readonly bell: () => number;
  readonly pick: <T>(from: readonly [T, ...T[]]) => T;
  /** A lower-case UUID, version 4. */
  readonly uuid: () => string;
  /** A stream of its own, so that one actor's draws never move another's. */
  readonly fork: (name: string) => Random;
}

const hashName = (seed: number, name: string): number => {
  let hash = seed | 0;
  for (let i = 0; i < name.length; i += 1) hash = (Math.imul(hash, 31) + name.charCodeAt(i)) | 0;
  return hash;
};

const HEX = "0123456789abcdef";

export const createRandom = (seed: number): Random => {
  const generator = xoroshiro128plus(seed);
  const whole = (low: number, high: number) => uniformInt(generator, low, high);
  const unit = () => whole(0, 0x3fffffff) / 0x40000000;
  const bell = () => {
    let sum = 0;
    for (let i = 0; i < 12; i += 1) sum += unit();
    return Math.max(-3, Math.min(3, sum - 6));
  };
  const hex = (length: number) => Array.from({ length }, () => HEX[whole(0, 15)]).join("");
  return {
    unit,
    whole,
    chance: (p) => unit() < p,
    bell,
    pick: (from) => from[whole(0, from.length - 1)] ?? from[0],
    uuid: () => `${hex(8)}-${hex(4)}-4${hex(3)}-${HEX[whole(8, 11)]}${hex(3)}-${hex(12)}`,
    fork: (name) => createRandom(hashName(seed, name)),
  };
};
