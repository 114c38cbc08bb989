import type { Side } from "@courtloom/core";
import type { FrozenWatch, Rate } from "@courtloom/match-log";

export const WATCH_STATES = ["quiet", "noticed", "standing", "easing"] as const;
/**
 * `noticed`: the evidence is worth a look, silently; `standing`: raised; `easing`: the evidence has fallen to half. An
 * alert that eases is over at the next change of ends, and then the watch is quiet or has noticed again.
 */
export type WatchState = (typeof WATCH_STATES)[number];

/** x of n attempts. */
export interface Tried {
  readonly x: number;
  readonly n: number;
}

/** A moment of the match as a player sees it. */
export interface Moment {
  /** Entry id of its first point. */
  readonly pointId: string;
  /** Set number, from 1. */
  readonly set: number;
  /** Games of that set when the point began: the player's own first. */
  readonly games: readonly [number, number];
}

/** From a raise to its closing; a raise while it eases goes on with it. Entry ids of points. */
export interface Episode {
  /** Counts 1, 2, 3 … within the watch. */
  readonly episode: number;
  readonly raisedBy: string;
  readonly easedBy?: string;
  readonly closedBy?: string;
}

/** What a watch says at a moment of the match. */
export interface WatchView {
  readonly watch: FrozenWatch;
  readonly side: Side;
  readonly rate: Rate;
  readonly state: WatchState;
  /** Whole match: events of attempts, and how many of the events were known to be off plan. */
  readonly match: Tried & { readonly offPlan: number };
  /** The run that the evidence stands on; absent while there is none. */
  readonly since?: Tried & { readonly from: Moment };
  /** Evidence against its threshold, in [0, 1]; ranks alerts. */
  readonly strength: number;
  /** Too little was charted, or a conflict is open, so that nothing is raised. */
  readonly isDoubtful: boolean;
  readonly episodes: readonly Episode[];
  /** Entry ids: the points of the events, and of the other attempts, one per attempt in order. */
  readonly hits: readonly string[];
  readonly others: readonly string[];
}
