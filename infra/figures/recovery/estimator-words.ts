import type { Estimator } from "./recover-academy.ts";

/** What an estimator is called where figures are printed. */
export const ESTIMATOR_WORDS: Readonly<Record<Estimator, string>> = {
  raw: "raw difference",
  academy: "academy only",
  set: "fit, spreads as set",
  halved: "fit, spreads halved",
  doubled: "fit, spreads doubled",
  fitted: "fit, spreads fitted",
};
