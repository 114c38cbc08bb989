import type { FigureName } from "@courtloom/decisions";

export interface FigureGroup {
  readonly id: string;
  readonly title: string;
  /** What to know before reading the group; one sentence or two. */
  readonly about: string;
  readonly figures: readonly FigureName[];
}

/** The figures as they stand on a player's page; the four counts and the biggest points have shapes of their own. SPEC PF1. */
export const FIGURE_GROUPS: readonly FigureGroup[] = [
  {
    id: "line",
    title: "Line balls",
    about: "Groundstrokes sent down the line. Missed: ended net, wide or long.",
    figures: ["lineMissed", "lineMissedOffPlan", "lineOffPlan", "lineShare", "lineHurt"],
  },
  {
    id: "kept",
    title: "Kept balls",
    about: "Groundstrokes kept cross-court or in the middle.",
    figures: ["keptMissed", "crossShare", "directionChanged"],
  },
  {
    id: "counts",
    title: "Right or wrong, made or missed",
    about: "The choice apart from the stroke: right and wrong are what the plan of that match said.",
    figures: ["rightMade", "rightMissed", "wrongMade", "wrongMissed", "planKept"],
  },
  {
    id: "moments",
    title: "Agreed moments",
    about: "Balls for which the plan surely had the line on, and chances counted as kept.",
    figures: ["agreedTaken", "passedUp"],
  },
  {
    id: "short",
    title: "Short balls",
    about: "Met inside the service line after the bounce. High: sits up or jumps.",
    figures: [
      "shortLowLine",
      "shortLowCameIn",
      "shortLowMissed",
      "shortLowWon",
      "shortHighLine",
      "shortHighCameIn",
      "shortHighMissed",
      "shortHighWon",
    ],
  },
  {
    id: "build",
    title: "Building up",
    about: "Points by how many own balls were kept before the first line ball.",
    figures: ["builtUp", "keptWon"],
  },
  {
    id: "serve",
    title: "Serve and return",
    about: "Points whose serve was told.",
    figures: ["firstServeIn", "wonOnFirst", "wonOnSecond", "aces", "doubleFaults", "returnWon"],
  },
  {
    id: "rally",
    title: "Rally length",
    about: "Strokes of both players, the serve counted.",
    figures: ["rallyLength"],
  },
  {
    id: "mind",
    title: "Hesitation, coming in and other balls",
    about: "Only balls where somebody answered: unanswered is unknown and stays out.",
    figures: ["hesitated", "cameIn", "otherMissed"],
  },
];
