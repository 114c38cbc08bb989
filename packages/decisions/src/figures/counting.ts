import { CHARTING_LEVELS, type ChartingLevel, type ShareTarget } from "@courtloom/match-log";
import type { Channel, DepthStruck } from "@courtloom/tennis";
import type { Choice, Incoming } from "../balls/ball.ts";
import type { FigureName } from "./registry.ts";

/** x of n while it is being counted, over all levels with the points, and per level without. */
export interface Counting {
  readonly hits: string[];
  readonly others: string[];
  /** By the level's place in `CHARTING_LEVELS`. */
  readonly x: number[];
  readonly n: number[];
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
  readonly figures: Map<FigureName, Counting>;
  readonly parts: Map<FigureName, Map<string, Counting>>;
  readonly cells: Map<string, CellCounting>;
  readonly targets: readonly TargetCounting[];
}

export const LEVEL_PLACES: Readonly<Record<ChartingLevel, number>> = {
  score: CHARTING_LEVELS.indexOf("score"),
  key: CHARTING_LEVELS.indexOf("key"),
  every: CHARTING_LEVELS.indexOf("every"),
};

export const emptyCounting = (): Counting => ({ hits: [], others: [], x: [0, 0, 0], n: [0, 0, 0] });

/** One more attempt. */
export const attempt = (counting: Counting, isHit: boolean, pointId: string, level: ChartingLevel): void => {
  const place = LEVEL_PLACES[level];
  counting.n[place] = (counting.n[place] ?? 0) + 1;
  if (isHit) counting.x[place] = (counting.x[place] ?? 0) + 1;
  (isHit ? counting.hits : counting.others).push(pointId);
};

/** The value of `key`, made when it is first asked for. */
export const reach = <K, V>(map: Map<K, V>, key: K, make: () => V): V => {
  const known = map.get(key);
  if (known !== undefined) return known;
  const made = make();
  map.set(key, made);
  return made;
};
