/** Sizes of a court in metres, by the rules of the game. SPEC G2. */
export const COURT = {
  length: 23.77,
  singlesWidth: 8.23,
  doublesWidth: 10.97,
  /** From the net. */
  serviceLine: 6.4,
  /** From the net: where a landing ball counts as deep, half-way from service line to baseline. */
  deepFrom: 9.14,
  /** From the middle: at this and beyond, a ball is in a side channel. */
  sideFrom: 1.37,
} as const;

export const BASELINE = COURT.length / 2;
export const SIDELINE = COURT.singlesWidth / 2;

/** How far a drawn end may lie from where it was meant: 12 % of the court's width, in metres, in each direction. */
export const JITTER = 0.99;

/** A point of the court in metres: x across, y along, the middle of the net at 0, 0. */
export interface CourtPoint {
  readonly x: number;
  readonly y: number;
}
