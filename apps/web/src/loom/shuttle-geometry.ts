import { isTooFew, type ShownRate } from "./rate-words.ts";

/** Places on the fixed scale from 0 to 10 in 10, in per cent of its width. */
export interface Span {
  readonly from: number;
  readonly width: number;
}

const place = (share: number): number => Math.min(1, Math.max(0, share)) * 100;

/** Where a range lies on the scale; ends outside 0 to 1 are cut, a reversed range has no width. */
export const spanOf = (low: number, high: number): Span => {
  const from = place(low);
  return { from, width: Math.max(0, place(high) - from) };
};

/** What is drawn for a count: nothing, loose beads, or a shuttle with its bead. SPEC rule BD6. */
export type ShuttleDrawing =
  | { readonly kind: "none" }
  | { readonly kind: "beads"; readonly filled: number; readonly hollow: number }
  | { readonly kind: "shuttle"; readonly taper: Span; readonly bead: number; readonly path: string };

/** Half the shuttle's thickness where the bead sits, in hundredths of its height. */
const BELLY = 17;

const round = (value: number): number => Math.round(value * 100) / 100;

/**
 * The taper as a path in a box of 100 by 100: pointed at both ends of the interval and widest at the
 * bead, which lies at `bead` hundredths of the box's width.
 */
export const taperPath = (bead: number): string => {
  const top = 50 - BELLY;
  const bottom = 50 + BELLY;
  const shoulder = 50 - BELLY * 0.35;
  const foot = 50 + BELLY * 0.35;
  const left = { end: round(bead * 0.45), near: round(bead * 0.7) };
  const right = { near: round(bead + (100 - bead) * 0.3), end: round(bead + (100 - bead) * 0.55) };
  const at = round(bead);
  return [
    "M0 50",
    `C${left.end} ${shoulder} ${left.near} ${top} ${at} ${top}`,
    `C${right.near} ${top} ${right.end} ${shoulder} 100 50`,
    `C${right.end} ${foot} ${right.near} ${bottom} ${at} ${bottom}`,
    `C${left.near} ${bottom} ${left.end} ${foot} 0 50Z`,
  ].join("");
};

/** Chooses and measures the drawing of a count. */
export const shuttleDrawing = (rate: ShownRate): ShuttleDrawing => {
  if (rate.n === 0) return { kind: "none" };
  if (isTooFew(rate.n)) return { kind: "beads", filled: rate.x, hollow: rate.n - rate.x };
  const share = rate.x / rate.n;
  const taper = spanOf(rate.low ?? share, rate.high ?? share);
  const bead = place(share);
  const inBox = taper.width === 0 ? 50 : ((bead - taper.from) / taper.width) * 100;
  return { kind: "shuttle", taper, bead, path: taperPath(inBox) };
};
