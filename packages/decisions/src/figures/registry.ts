import type { ChartingLevel } from "@courtloom/match-log";
import { cameIn, hesitated, otherMissed } from "./ball-figures.ts";
import type { FigureDef, Unit } from "./figure-def.ts";
import { crossShare, directionChanged, keptMissed, lineHurt, lineMissed, lineShare } from "./line-figures.ts";
import {
  agreedTaken,
  lineMissedOffPlan,
  lineOffPlan,
  passedUp,
  planKept,
  rightMade,
  rightMissed,
  wrongMade,
  wrongMissed,
} from "./plan-figures.ts";
import { builtUp, keptWon, rallyLength } from "./point-figures.ts";
import { aces, doubleFaults, firstServeIn, returnWon, wonOnFirst, wonOnSecond } from "./serve-figures.ts";
import { shortHigh, shortLow } from "./short-figures.ts";

/** Every figure: what it counts, which levels may feed it, and how. The one place; in the order of showing. SPEC D2. */
const REGISTRY = {
  lineMissed,
  lineMissedOffPlan,
  lineShare,
  lineOffPlan,
  lineHurt,
  keptMissed,
  planKept,
  rightMade,
  rightMissed,
  wrongMade,
  wrongMissed,
  agreedTaken,
  passedUp,
  directionChanged,
  crossShare,
  builtUp,
  keptWon,
  shortLowLine: shortLow.line,
  shortLowCameIn: shortLow.cameIn,
  shortLowMissed: shortLow.missed,
  shortLowWon: shortLow.won,
  shortHighLine: shortHigh.line,
  shortHighCameIn: shortHigh.cameIn,
  shortHighMissed: shortHigh.missed,
  shortHighWon: shortHigh.won,
  hesitated,
  cameIn,
  otherMissed,
  firstServeIn,
  wonOnFirst,
  wonOnSecond,
  aces,
  doubleFaults,
  returnWon,
  rallyLength,
} as const satisfies Readonly<Record<string, FigureDef>>;

export type FigureName = keyof typeof REGISTRY;

export const FIGURES: Readonly<Record<FigureName, FigureDef>> = REGISTRY;
export const FIGURE_NAMES = Object.keys(REGISTRY) as readonly FigureName[];

/** Whether points charted at a level may feed a figure. */
export const feeds = (figure: FigureName, level: ChartingLevel): boolean =>
  FIGURES[figure].levels.includes(level);

/** What a figure counts; balls, points and moments are never added up. */
export const unitOf = (figure: FigureName): Unit => FIGURES[figure].unit;
