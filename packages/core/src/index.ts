export { assert, unreachable } from "./assert.ts";
export type { ByPlayer, Side } from "./by-player.ts";
export { byPlayer, otherSide, SIDES, withSide } from "./by-player.ts";
export type { Clock } from "./clock.ts";
export type { AccountPrincipal, CourtsidePrincipal, Principal, WallPrincipal } from "./principal.ts";
export type { Result } from "./result.ts";
export { err, ok } from "./result.ts";
