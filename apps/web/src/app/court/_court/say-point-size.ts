import type { PointSizeNow } from "@courtloom/decisions";

const STEP_WORDS = {
  top5: "one of the biggest so far",
  top10: "among the biggest tenth so far",
  topQuarter: "among the biggest quarter so far",
} as const satisfies Record<NonNullable<PointSizeNow["step"]>, string>;

/** The point to be played, where it is a big one, as a rank and never as a chance; undefined for all others. SPEC HF20. */
export const sayPointSize = (size: PointSizeNow | undefined): string | undefined =>
  size?.step ? `This point: ${STEP_WORDS[size.step]}, ${size.rank} of ${size.of} by the score` : undefined;
