import type { Heard, TileState } from "@courtloom/protocol";

/** A phone that beats every three seconds counts as not heard from here. SPEC rule BD2. */
export const NOT_HEARD_FROM_MS = 10_000;
/** From here a court in play is blind: its figures are not shown. SPEC rule BD3. */
export const BLIND_FROM_MS = 90_000;

/**
 * How far a court's tile may be believed. `none`: not in play, so silence means nothing. `blind` with
 * `seconds` null: in play, and no phone was heard since the server has been up.
 */
export type Freshness =
  | { readonly kind: "none" }
  | { readonly kind: "heard"; readonly seconds: number }
  | { readonly kind: "notHeard"; readonly seconds: number }
  | { readonly kind: "blind"; readonly seconds: number | null };

/**
 * The freshness of a court by the server's clock. A word from the future (clocks differ a little) counts
 * as heard just now. Pure.
 */
export const freshnessOf = (state: TileState, heard: Heard | null, serverNowMs: number): Freshness => {
  if (state !== "playing") return { kind: "none" };
  if (heard === null || heard.heardMs === null) return { kind: "blind", seconds: null };
  const silentMs = Math.max(0, serverNowMs - heard.heardMs);
  const seconds = Math.floor(silentMs / 1000);
  if (silentMs >= BLIND_FROM_MS) return { kind: "blind", seconds };
  return { kind: silentMs >= NOT_HEARD_FROM_MS ? "notHeard" : "heard", seconds };
};

/** "94 s", from two minutes "4 min", from two hours "3 h". */
export const silenceWords = (seconds: number): string => {
  if (seconds < 120) return `${seconds} s`;
  if (seconds < 7200) return `${Math.floor(seconds / 60)} min`;
  return `${Math.floor(seconds / 3600)} h`;
};
