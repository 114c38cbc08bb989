import type { Temper } from "./roster.ts";

/** Chances of one kind of player, per ball. Invented; chosen so that the demo's figures look like juniors'. */
export interface Habits {
  /** Going down the line from a side, on an ordinary ball and on one that sits up. */
  readonly lineOrdinary: number;
  readonly lineSitsUp: number;
  /** How often the opponent is off the court when an ordinary ball goes down the line. */
  readonly lineWhenWide: number;
  /** How often there is time for a line ball from inside the baseline. */
  readonly lineWithTime: number;
  /** Missing a line ball on an ordinary ball and on one that sits up. */
  readonly lineMissOrdinary: number;
  readonly lineMissSitsUp: number;
  /** Missing a ball kept cross-court or to the middle. */
  readonly keptMiss: number;
  /** Coming in behind a short ball. */
  readonly comesIn: number;
}

export const HABITS: Readonly<Record<Temper, Habits>> = {
  steady: {
    lineOrdinary: 0.14,
    lineSitsUp: 0.4,
    lineWhenWide: 0.6,
    lineWithTime: 0.7,
    lineMissOrdinary: 0.3,
    lineMissSitsUp: 0.2,
    keptMiss: 0.15,
    comesIn: 0.4,
  },
  impatient: {
    lineOrdinary: 0.36,
    lineSitsUp: 0.5,
    lineWhenWide: 0.2,
    lineWithTime: 0.3,
    lineMissOrdinary: 0.42,
    lineMissSitsUp: 0.26,
    keptMiss: 0.155,
    comesIn: 0.4,
  },
  brave: {
    lineOrdinary: 0.2,
    lineSitsUp: 0.68,
    lineWhenWide: 0.4,
    lineWithTime: 0.5,
    lineMissOrdinary: 0.34,
    lineMissSitsUp: 0.22,
    keptMiss: 0.155,
    comesIn: 0.8,
  },
};

/** Serving, alike for all: first serves in, aces among them, second serves in, returns missed. */
export const SERVICE = {
  firstIn: 0.6,
  aceOfFirstIn: 0.06,
  secondIn: 0.89,
  returnMissFirst: 0.25,
  returnMissSecond: 0.14,
  /** How much the serve helps the server's next ball: taken off its chance to miss. */
  firstHelps: 0.05,
} as const;
