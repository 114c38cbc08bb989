import type { Side } from "@courtloom/core";

/** One number per side, [A, B]: the shape in which scores are written down and stored. */
export type Pair = readonly [number, number];

export const LOVE: Pair = [0, 0];

export type SideIndex = 0 | 1;

export const indexOf = (side: Side): SideIndex => (side === "A" ? 0 : 1);

export const sideAt = (index: SideIndex): Side => (index === 0 ? "A" : "B");

export const otherIndex = (index: SideIndex): SideIndex => (index === 0 ? 1 : 0);

export const plusOne = (pair: Pair, index: SideIndex): Pair =>
  index === 0 ? [pair[0] + 1, pair[1]] : [pair[0], pair[1] + 1];

export const sum = (pair: Pair): number => pair[0] + pair[1];

/** Who is ahead; `null` when level. */
export const aheadIn = (pair: Pair): SideIndex | null =>
  pair[0] === pair[1] ? null : pair[0] > pair[1] ? 0 : 1;
