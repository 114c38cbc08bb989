import type { LineCell, LineSpot, LineVerdict, WonRow } from "@courtloom/api";
import { worthWords } from "./estimate-words.ts";

export const VERDICT_TITLES: Readonly<Record<LineVerdict, string>> = {
  pays: "The line pays",
  costs: "The line costs",
  cantTell: "Can't tell yet",
};

const DEPTH_WORDS = {
  behindBaseline: "Behind the baseline",
  insideBaseline: "Inside the baseline",
  insideServiceLine: "Inside the service line",
} satisfies Record<LineSpot["depth"], string>;

export const depthWords = (depth: LineSpot["depth"]): string => DEPTH_WORDS[depth];

/** "Behind the baseline, left side". */
export const spotWords = ({ depth, side }: Pick<LineSpot, "depth" | "side">): string =>
  `${DEPTH_WORDS[depth]}, ${side} side`;

export const LANDING_WORDS = {
  short: "answering a short ball",
  mid: "answering a ball of middle length",
  deep: "answering a deep ball",
  notKnown: "the ball before not charted",
} as const;

/** "31 line, 160 kept": both counts, in balls. */
export const bothCounts = ({ line, kept }: Pick<LineCell, "line" | "kept">): string =>
  `${line.n} line, ${kept.n} kept`;

const FEWEST = 5;

/** Why it cannot be told: too few of either, or too even. */
const cantTellWords = ({ line, kept }: Pick<LineCell, "line" | "kept">): string => {
  if (line.n === 0 && kept.n === 0) return "No ball charted here at every ball.";
  if (line.n < FEWEST || kept.n < FEWEST)
    return `Too few to say: ${line.n} line balls, ${kept.n} kept balls.`;
  return `The difference is not distinguishable from none: ${line.n} line balls, ${kept.n} kept balls.`;
};

/** What is found in one place, in a sentence or two; it goes with the line, and is no cause. SPEC PF13. */
export const findingWords = (cell: LineCell): string => {
  if (cell.verdict === "cantTell" || cell.worth === null) return cantTellWords(cell);
  return `${worthWords(cell.worth)}.`;
};

const CONTRADICTIONS = {
  keepButLinePays: "The plan says keep. The line goes with more points here: it may not be the cause.",
  lineButKeptPays:
    "The plan says down the line. The kept ball goes with more points here: it may not be the cause.",
} satisfies Record<NonNullable<LineSpot["contradicts"]>, string>;

/** Where the plan and the points do not agree, in a sentence; empty where they do not differ. SPEC PF14. */
export const contradictionWords = ({ contradicts }: Pick<LineSpot, "contradicts">): string =>
  contradicts === null ? "" : CONTRADICTIONS[contradicts];

const PLAN_WORDS = {
  keep: "The plan says keep.",
  straight: "The plan says down the line.",
  free: "The plan leaves it free.",
  depends: "What the plan says depends on the ball, the time and the opponent.",
} satisfies Record<NonNullable<LineSpot["plan"]>, string>;

export const planWords = (plan: LineSpot["plan"]): string =>
  plan === null ? "The plan says nothing of it." : PLAN_WORDS[plan];

/** "9 of 31 points won"; a count of balls, in points that they were struck in. */
export const wonOfWords = ({ x, n }: WonRow): string => `${x} of ${n}`;
