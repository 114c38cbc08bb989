import { clampServeChance } from "@courtloom/tennis";
import { tallyCount } from "../tally/tally-count.ts";
import type { AcademyFit } from "./academy-fit.ts";

/** The share of points on serve that is taken for both sides before a match, in [0, 1], and whose it is. */
export interface ServeBefore {
  readonly before: number;
  readonly source: "academy" | "default";
}

/** Taken where an academy has charted too few serves: between what is published of young and of grown players. */
export const DEFAULT_SERVE: ServeBefore = { before: 0.55, source: "default" };

/** Below so many points served an academy's share says nothing. */
const ENOUGH = 100;

/** An academy's share of points won on serve, else the default. SPEC HF18. */
export const serveBefore = (fit: AcademyFit | undefined): ServeBefore => {
  if (!fit) return DEFAULT_SERVE;
  const [first, second] = (["wonOnFirst", "wonOnSecond"] as const).map((name) =>
    tallyCount(fit.academy, name),
  );
  const n = (first?.n ?? 0) + (second?.n ?? 0);
  if (n < ENOUGH) return DEFAULT_SERVE;
  return { before: clampServeChance(((first?.x ?? 0) + (second?.x ?? 0)) / n), source: "academy" };
};
