import type { ScoreBoard } from "@courtloom/tennis";
import type { Fact } from "./entry.ts";

/** What a fact was said to be: at first, under its own id, and by each amendment, under that entry's id. */
export interface Saying {
  readonly id: string;
  readonly fact: Fact;
  readonly laneId: string;
  readonly saidAt: number;
  readonly from?: string;
  readonly voided: boolean;
}

/** A fact in its place, with what corrections have made of it. */
export interface TrailFact {
  readonly id: string;
  readonly pos: number;
  /** Of the person who charted it: of another lane than the entry's where it was taken from there. */
  readonly laneId: string;
  readonly wallMs: number;
  readonly fact: Fact;
  /** Pos of the last amendment, or of the entry itself. */
  readonly saidAt: number;
  readonly voided: boolean;
  /** The entry of another lane whose saying this is; another person saw it, perhaps from another seat. */
  readonly from?: string;
  /** From the first on; absent while it was never amended. */
  readonly sayings?: readonly Saying[];
}

/** What the fold keeps beside what it shows, to go on from here. */
export interface Trail {
  readonly board: ScoreBoard;
  readonly facts: readonly TrailFact[];
  /** The highest epoch seen: entries of an older one came late and do not make the score. */
  readonly epoch: number;
  /** Corrections and openings that found nothing to act on; facts set aside are found again at each replay. */
  readonly refused: readonly {
    readonly pos: number;
    readonly id: string;
    readonly laneId: string;
    readonly reason: "unknownTarget" | "notLead" | "secondOpening" | "sealed";
  }[];
  /** What second lanes charted: kept and compared, never in the score by itself. */
  readonly second: readonly { readonly id: string; readonly laneId: string }[];
}
