import type { ByPlayer, Side } from "@courtloom/core";
import type { FigureName, RateRow, Unit } from "@courtloom/decisions";
import type { PointSizeStep } from "@courtloom/tennis";
import type { MatchStage } from "../api-store.ts";
import type { ChoiceCost, ServeBasisRow } from "./choice-cost.ts";

/** A figure of one match. */
export interface MatchFigureRow extends RateRow {
  readonly id: FigureName;
  readonly unit: Unit;
}

/** The size of a point: how much of the match rested on it, as a rank among the match's points. */
export interface SizedPoint {
  readonly pointId: string;
  /** Place in the match, from 1. */
  readonly pointNo: number;
  /** Before the point, from side A: "6-4 3-2 30-15". */
  readonly score: string;
  readonly server: Side;
  readonly winner: Side;
  /** 1 for the biggest; equal ones share a rank. */
  readonly rank: number;
  readonly of: number;
  /** Null when it is of none: the biggest 5 % begin with 20 points. */
  readonly step: PointSizeStep | null;
}

/** What one match says, for staff: also while it is played. */
export interface MatchFiguresFile {
  readonly matchId: string;
  readonly stage: MatchStage;
  readonly names: ByPlayer<string>;
  /** Null for a side without figures. */
  readonly figures: ByPlayer<readonly MatchFigureRow[] | null>;
  readonly cost: ByPlayer<ChoiceCost | null>;
  /** In the order of play; empty while the match waits. */
  readonly points: readonly SizedPoint[];
  /** Ids of the biggest, at most 5, the biggest first. */
  readonly biggest: readonly string[];
  readonly serve: ServeBasisRow;
}
