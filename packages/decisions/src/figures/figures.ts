import type { ByPlayer } from "@courtloom/core";
import type { ChartingLevel, ShareTarget } from "@courtloom/match-log";
import type { Channel, DepthStruck } from "@courtloom/tennis";
import type { Choice, Incoming } from "../balls/ball.ts";
import type { FigureName } from "./registry.ts";

/**
 * x of n, with the points it stands on (ids of their entries, in order, one per counted ball, point or moment).
 * Empty: n = 0.
 */
export interface Count {
  readonly x: number;
  readonly n: number;
  /** Entry ids, one per attempt: those counted in x, and the others. */
  readonly hits: readonly string[];
  readonly others: readonly string[];
}

/** A share that the plan wants, with what was played so far, in [0, 1] of n balls. SPEC D35. */
export interface TargetFigure {
  readonly ruleId: string;
  readonly target: ShareTarget;
  readonly count: Count;
}

/** What followed one choice in one situation: entry ids, one per groundstroke. SPEC D36. */
export interface CellFigure {
  readonly level: ChartingLevel;
  readonly depth: DepthStruck;
  readonly side: Channel;
  /** How deep the incoming ball came down; `undefined` at key balls, or where it was not drawn. */
  readonly landing: Incoming["landing"];
  readonly choice: Choice;
  /** Balls, and points that any of them was struck in. */
  readonly n: number;
  readonly points: number;
  readonly missed: readonly string[];
  /** Balls of points won and lost; those that the net cord or a disputed call decided are in neither. */
  readonly won: readonly string[];
  readonly lost: readonly string[];
  /** Judged off plan or passed up. */
  readonly against: readonly string[];
}

/** What one charted player did: every figure of the registry, the parts of those that have any, and more. SPEC D1 to D36. */
export interface PlayerFigures extends Readonly<Record<FigureName, Count>> {
  /** Parts that were met, by the part's name; their n add up to the figure's. */
  readonly parts: Readonly<Partial<Record<FigureName, Readonly<Record<string, Count>>>>>;
  readonly cells: readonly CellFigure[];
  /** In the order of the plan; empty without one. */
  readonly targets: readonly TargetFigure[];
}

/** Figures of a match; `undefined` for a side that is not charted. */
export type MatchFigures = ByPlayer<PlayerFigures | undefined>;
