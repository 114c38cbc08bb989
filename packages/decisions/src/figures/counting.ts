import type { ChartingLevel, ShareTarget } from "@courtloom/match-log";
import type { Channel, DepthStruck } from "@courtloom/tennis";
import type { Choice, Incoming } from "../balls/ball.ts";
import type { PlanReading } from "../plan/read-plan.ts";

/** x of n while it is being counted: the points of those that count in x, and of the others. */
export interface Counting {
  readonly hits: string[];
  readonly others: string[];
}

/** One figure of one player while it is being counted. */
export interface FigureCounting {
  readonly all: Counting;
  /** Empty for a figure without parts. */
  readonly parts: Map<string, Counting>;
}

/** What followed a choice in a situation while it is being counted. */
export interface CellCounting {
  readonly level: ChartingLevel;
  readonly depth: DepthStruck;
  readonly side: Channel;
  readonly landing: Incoming["landing"];
  readonly choice: Choice;
  readonly missed: string[];
  readonly won: string[];
  readonly lost: string[];
  readonly against: string[];
  /** Balls, and points that any of them was struck in. */
  n: number;
  points: number;
  lastPoint: string;
}

/** How a rule's target is being met. */
export interface TargetCounting {
  readonly ruleId: string;
  readonly target: ShareTarget;
  readonly count: Counting;
}

/** Everything of one player while it is being counted. */
export interface PlayerCounting {
  readonly plan: PlanReading;
  /** In the order of `FIGURE_NAMES`. */
  readonly figures: readonly FigureCounting[];
  /** By a number that tells situations, choices and levels apart. */
  readonly cells: Map<number, CellCounting>;
  readonly targets: readonly TargetCounting[];
}

export const emptyCounting = (): Counting => ({ hits: [], others: [] });

export const emptyFigure = (): FigureCounting => ({ all: emptyCounting(), parts: new Map() });

/** One more attempt. */
export const attempt = (counting: Counting, isHit: boolean, pointId: string): void => {
  (isHit ? counting.hits : counting.others).push(pointId);
};
