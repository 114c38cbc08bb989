import type { Side } from "@courtloom/core";
import type {
  BallHeight,
  BallTime,
  ChartingLevel,
  OpponentPlace,
  PlanChoice,
  ShotResult,
} from "@courtloom/match-log";
import type {
  Channel,
  DepthStruck,
  Direction,
  LandingDepth,
  StrokeKind,
  StrokeSide,
} from "@courtloom/tennis";
import type { Judgement } from "../plan/verdict.ts";
import type { RallyPhase } from "./rally-phase.ts";

/** Where a ball was sent: as drawn, or `kept` for a touch, which says cross-court or middle. SPEC D12. */
export type Choice = PlanChoice;

/** The ball that was answered, as its striker drew it; only at every ball, where the opponent's are drawn. */
export interface Incoming {
  /** In the opponent's own words: a ball down the line is one for the player who sent it. */
  readonly direction: Direction | undefined;
  readonly landing: LandingDepth | undefined;
}

/** What was known before a ball was struck. `undefined` is unknown: nobody answered, or the level does not say. SPEC D12. */
export interface Situation {
  readonly depth: DepthStruck;
  /** The channel that it was struck from, by the striker's own left and right. */
  readonly side: Channel;
  readonly strokeSide: StrokeSide;
  readonly ballHeight: BallHeight | undefined;
  readonly ballTime: BallTime | undefined;
  readonly opponent: OpponentPlace | undefined;
  readonly incoming: Incoming | undefined;
  readonly phase: RallyPhase | undefined;
}

/** A counted ball of a charted player: its situation, the choice, and what became of it. */
export interface Ball extends Situation {
  /** Id of the entry that charted its point. */
  readonly pointId: string;
  /** Its place among the charted shots of the point, from 0. */
  readonly place: number;
  readonly striker: Side;
  readonly level: ChartingLevel;
  readonly kind: StrokeKind;
  /** `undefined` for a drawing without a direction. */
  readonly choice: Choice | undefined;
  /** Sent on another line than it came; unknown where either is. */
  readonly isChange: boolean | undefined;
  readonly cameIn: boolean | undefined;
  readonly hesitated: boolean | undefined;
  readonly result: ShotResult | undefined;
  /** Ended net, wide or long. */
  readonly missed: boolean;
  /** What the striker's plan says of it, and why. */
  readonly judgement: Judgement;
}
