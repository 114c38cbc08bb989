import type { Side } from "@courtloom/core";
import type { EndSeen, ScoreState } from "@courtloom/tennis";
import type { MatchOpened } from "./opened.ts";
import type { ChartingLevel, Point } from "./point.ts";
import type { Trail } from "./trail.ts";

/** A point that counts in the score, in its place, with corrections already applied. */
export interface ViewedPoint {
  /** Id of the entry that charted it. */
  readonly id: string;
  readonly pos: number;
  readonly laneId: string;
  readonly wallMs: number;
  readonly point: Point;
  /** The score when it began and when it ended. */
  readonly before: ScoreState;
  readonly after: ScoreState;
  readonly server: Side;
  /** Who was charted then; a later change of subjects leaves it. */
  readonly subjects: readonly Side[];
}

/** An entry that the score could not take; kept, shown and mendable. */
export interface SetAside {
  readonly pos: number;
  readonly id: string;
  readonly reason: SetAsideReason;
}

export const SET_ASIDE = [
  "matchOver",
  "unknownTarget",
  "impossibleScore",
  "notLead",
  "secondOpening",
  "sealed",
  "notSuspended",
] as const;
export type SetAsideReason = (typeof SET_ASIDE)[number];

/** What a match looks like after its log up to `pos`. A pure function of the log; plain data. */
export interface MatchView {
  readonly matchId: string;
  readonly pos: number;
  readonly opened: MatchOpened;
  readonly score: ScoreState;
  readonly points: readonly ViewedPoint[];
  readonly setAside: readonly SetAside[];
  readonly level: ChartingLevel;
  readonly subjects: readonly Side[];
  /** End of side A for the next point as the chartist sees it; undefined until a point or a statement tells. */
  readonly endOfA: EndSeen | undefined;
  readonly suspended: boolean;
  readonly sealed: boolean;
  /** What the fold needs to go on; not for reading. */
  readonly trail: Trail;
}
