import type { FigureName } from "@courtloom/decisions";
import type { Dye } from "../loom/shuttle.tsx";

/** How a figure is called, and what its n counts; `counted` always names balls, points or moments. */
export interface FigureWords {
  readonly label: string;
  readonly counted: string;
  /** A direction that the figure counts gives its dye; otherwise ink. */
  readonly dye?: Dye;
}

/** Words of every figure. SPEC PF2. */
export const FIGURE_WORDS: Readonly<Record<FigureName, FigureWords>> = {
  lineMissed: { label: "Line balls missed", counted: "line balls" },
  lineMissedOffPlan: { label: "Missed line balls that were off plan", counted: "missed line balls" },
  lineShare: { label: "Went down the line", counted: "groundstroke balls", dye: "line" },
  lineOffPlan: { label: "Line balls off plan", counted: "line balls judged" },
  lineHurt: { label: "Line balls that hurt", counted: "line balls with a known result" },
  keptMissed: { label: "Kept balls missed", counted: "kept balls" },
  planKept: { label: "Plan kept", counted: "balls the plan speaks of" },
  rightMade: { label: "Right ball made", counted: "balls judged" },
  rightMissed: { label: "Right ball missed", counted: "balls judged" },
  wrongMade: { label: "Wrong ball made", counted: "balls judged" },
  wrongMissed: { label: "Wrong ball missed", counted: "balls judged" },
  agreedTaken: { label: "Agreed moments taken", counted: "moments" },
  passedUp: { label: "Agreed moments passed up", counted: "moments" },
  directionChanged: { label: "Changed direction", counted: "balls with both directions known" },
  crossShare: { label: "Cross-court of the kept", counted: "kept balls drawn", dye: "cross" },
  builtUp: { label: "Won after a line ball", counted: "points with a line ball" },
  keptWon: { label: "Won with every ball kept", counted: "points with every ball kept" },
  shortLowLine: { label: "Short and low: went down the line", counted: "balls", dye: "line" },
  shortLowCameIn: { label: "Short and low: came in", counted: "balls answered" },
  shortLowMissed: { label: "Short and low: missed", counted: "balls" },
  shortLowWon: { label: "Short and low: won the point", counted: "points" },
  shortHighLine: { label: "Short and high: went down the line", counted: "balls", dye: "line" },
  shortHighCameIn: { label: "Short and high: came in", counted: "balls answered" },
  shortHighMissed: { label: "Short and high: missed", counted: "balls" },
  shortHighWon: { label: "Short and high: won the point", counted: "points" },
  hesitated: { label: "Changed the mind", counted: "balls answered" },
  cameIn: { label: "Came in", counted: "balls answered" },
  otherMissed: { label: "Other balls missed", counted: "balls that are no groundstrokes" },
  firstServeIn: { label: "First serve in", counted: "points served" },
  wonOnFirst: { label: "Won on the first serve", counted: "points served" },
  wonOnSecond: { label: "Won on the second serve", counted: "points served" },
  aces: { label: "Aces", counted: "points served" },
  doubleFaults: { label: "Double faults", counted: "points served" },
  returnWon: { label: "Won receiving", counted: "points received" },
  rallyLength: { label: "Won, by length of the rally", counted: "points" },
};
