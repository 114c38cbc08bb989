/** How much room a court has: the more courts share a screen, the denser each is drawn. */
export const BOARD_STEPS = ["roomy", "dense", "tight", "tiny"] as const;
export type BoardStep = (typeof BOARD_STEPS)[number];

/** Columns that fill a wide screen evenly: one row up to three courts, two rows up to eight, then four to eight wide. */
export const boardColumns = (courts: number): number => {
  if (courts <= 3) return Math.max(1, courts);
  if (courts <= 8) return Math.ceil(courts / 2);
  if (courts <= 16) return 4;
  if (courts <= 20) return 5;
  if (courts <= 24) return 6;
  return courts <= 35 ? 7 : 8;
};

/** Two rows are roomy, three dense; up to 35 courts are tight, more are tiny, so that 64 are read at once. SPEC rule BD41. */
export const boardStep = (courts: number): BoardStep => {
  if (courts <= 8) return "roomy";
  if (courts <= 12) return "dense";
  return courts <= 35 ? "tight" : "tiny";
};
