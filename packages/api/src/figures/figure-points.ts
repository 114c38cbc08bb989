import type { Choice, FigureName, Verdict } from "@courtloom/decisions";
import type { BallHeight, BallTime, ChartingLevel, OpponentPlace, ShotResult } from "@courtloom/match-log";
import type { Channel, DepthStruck, StrokeKind } from "@courtloom/tennis";

/** The ball behind an attempt; what nobody answered is null. */
export interface BehindBall {
  readonly kind: StrokeKind;
  readonly depth: DepthStruck;
  readonly side: Channel;
  readonly choice: Choice | null;
  readonly missed: boolean;
  readonly result: ShotResult | null;
  readonly ballHeight: BallHeight | null;
  readonly ballTime: BallTime | null;
  readonly opponent: OpponentPlace | null;
  readonly verdict: Verdict;
}

/** One attempt of a figure: a ball, a point, or a moment that was only counted (then without a ball). */
export interface FigurePoint {
  readonly matchId: string;
  readonly playedOn: string;
  readonly title: string;
  readonly opponentName: string;
  readonly pointId: string;
  /** Place of the point in its match, from 1. */
  readonly pointNo: number;
  /** The score before the point from the player's side: "6-4 3-2 30-15". */
  readonly score: string;
  readonly isServing: boolean;
  readonly level: ChartingLevel;
  /** It counts in x. */
  readonly hit: boolean;
  readonly part: string | null;
  /** Whether the player won the point; null where the net cord or a disputed call decided it. */
  readonly won: boolean | null;
  readonly ball: BehindBall | null;
}

/** A page of what a figure stands on, the latest match first and in it in the order of play. */
export interface FigurePoints {
  readonly figureId: FigureName;
  readonly x: number;
  readonly n: number;
  readonly rows: readonly FigurePoint[];
  /** Where the next page begins; null at the end. */
  readonly next: number | null;
}
