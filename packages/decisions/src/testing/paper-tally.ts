import type { FigureName } from "../figures/registry.ts";
import type { TallyCell } from "../tally/tally.ts";

/** What the paper sheet says of side A, counted by hand: x of n of every figure. */
export const PAPER_FIGURES: Readonly<Record<FigureName, readonly [x: number, n: number]>> = {
  lineMissed: [10, 24],
  lineMissedOffPlan: [6, 9],
  lineShare: [24, 80],
  lineOffPlan: [8, 19],
  lineHurt: [13, 23],
  keptMissed: [3, 54],
  planKept: [13, 27],
  rightMade: [10, 24],
  rightMissed: [3, 24],
  wrongMade: [4, 24],
  wrongMissed: [7, 24],
  agreedTaken: [8, 19],
  passedUp: [11, 19],
  directionChanged: [13, 26],
  crossShare: [13, 16],
  builtUp: [13, 24],
  keptWon: [13, 19],
  shortLowLine: [3, 6],
  shortLowCameIn: [3, 5],
  shortLowMissed: [1, 6],
  shortLowWon: [3, 6],
  shortHighLine: [1, 2],
  shortHighCameIn: [0, 2],
  shortHighMissed: [0, 2],
  shortHighWon: [2, 2],
  hesitated: [2, 4],
  cameIn: [3, 7],
  otherMissed: [2, 11],
  firstServeIn: [21, 30],
  wonOnFirst: [17, 20],
  wonOnSecond: [4, 9],
  aces: [3, 30],
  doubleFaults: [1, 30],
  returnWon: [11, 29],
  rallyLength: [12, 23],
};

/** The parts of those that have any. */
export const PAPER_PARTS: Readonly<
  Partial<Record<FigureName, Readonly<Record<string, readonly [x: number, n: number]>>>>
> = {
  lineMissed: {
    "behindBaseline.left": [3, 7],
    "behindBaseline.right": [7, 12],
    "insideBaseline.left": [0, 1],
    "insideBaseline.right": [0, 2],
    "insideServiceLine.right": [0, 2],
  },
  lineShare: {
    "behindBaseline.left": [7, 22],
    "behindBaseline.middle": [0, 4],
    "behindBaseline.right": [12, 44],
    "insideBaseline.left": [1, 2],
    "insideBaseline.right": [2, 3],
    "insideServiceLine.left": [0, 1],
    "insideServiceLine.right": [2, 4],
  },
  keptMissed: {
    "behindBaseline.left": [1, 15],
    "behindBaseline.middle": [0, 2],
    "behindBaseline.right": [1, 32],
    "insideBaseline.left": [0, 1],
    "insideBaseline.right": [0, 1],
    "insideServiceLine.left": [0, 1],
    "insideServiceLine.right": [1, 2],
  },
  builtUp: { "0": [3, 10], "1": [5, 8], "2": [4, 4], "4": [0, 1], "5+": [1, 1] },
  shortLowLine: { left: [0, 2], right: [3, 4] },
  shortLowCameIn: { left: [1, 2], right: [2, 3] },
  shortLowMissed: { "left.cross": [0, 2], "right.cross": [1, 1], "right.line": [0, 3] },
  shortLowWon: {
    "left.cross.in": [1, 1],
    "left.cross.stayed": [0, 1],
    "right.cross.unknown": [0, 1],
    "right.line.in": [1, 2],
    "right.line.stayed": [1, 1],
  },
  shortHighLine: { right: [1, 2] },
  shortHighCameIn: { right: [0, 2] },
  shortHighMissed: { "right.cross": [0, 1], "right.line": [0, 1] },
  shortHighWon: { "right.cross.stayed": [1, 1], "right.line.stayed": [1, 1] },
  otherMissed: { approach: [0, 1], return: [2, 10] },
  returnWon: { first: [4, 17], second: [7, 12] },
  rallyLength: { building: [7, 10], long: [0, 1], opening: [5, 12] },
};

/** The targets of the starter plan. */
export const PAPER_TARGETS: readonly (readonly [ruleId: string, x: number, n: number])[] = [
  ["short-low", 3, 6],
  ["behind-baseline", 49, 70],
];

/** Groundstrokes by situation and choice. */
export const PAPER_CELLS: Readonly<Record<"key" | "every", Readonly<Record<string, TallyCell>>>> = {
  key: {
    "BL-k": [11, 0, 10, 1, 9, 0],
    "BL-l": [5, 2, 3, 2, 5, 2],
    "BM-f": [1, 1, 0, 1, 1, 0],
    "BM-k": [2, 0, 2, 0, 2, 0],
    "BR-c": [1, 1, 0, 1, 1, 0],
    "BR-k": [19, 0, 13, 5, 15, 0],
    "BR-l": [7, 4, 2, 5, 7, 2],
    "IL-k": [1, 0, 1, 0, 1, 0],
    "IL-l": [1, 0, 1, 0, 1, 1],
    "IR-l": [1, 0, 1, 0, 1, 0],
    "SR-c": [2, 1, 1, 1, 2, 1],
    "SR-l": [1, 0, 1, 0, 1, 0],
  },
  every: {
    BLdl: [1, 1, 0, 1, 1, 1],
    BLmc: [2, 1, 1, 1, 2, 1],
    BLml: [1, 0, 1, 0, 1, 0],
    BLmm: [2, 0, 2, 0, 2, 0],
    BMmf: [1, 0, 1, 0, 1, 0],
    BRdc: [2, 0, 1, 1, 2, 1],
    BRdl: [1, 0, 1, 0, 1, 0],
    BRmc: [7, 0, 3, 4, 5, 0],
    BRmk: [2, 0, 2, 0, 1, 0],
    BRml: [4, 3, 1, 3, 4, 2],
    BRmm: [1, 0, 1, 0, 1, 0],
    IRdl: [1, 0, 1, 0, 1, 0],
    IRmc: [1, 0, 1, 0, 1, 1],
    SLsc: [1, 0, 0, 1, 1, 1],
    SRsl: [1, 0, 1, 0, 1, 0],
  },
};
