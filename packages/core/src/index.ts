export { assert, unreachable } from "./assert.ts";
export type { ByPlayer, Side } from "./by-player.ts";
export { byPlayer, otherSide, SIDES, withSide } from "./by-player.ts";
export type { Clock } from "./clock.ts";
export type { Result } from "./result.ts";
export { err, ok } from "./result.ts";
