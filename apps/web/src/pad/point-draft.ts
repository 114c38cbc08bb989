import type { Side } from "@courtloom/core";
import type { Miss, ServeOutcome, Shot } from "@courtloom/match-log";
import type { EndSeen, Seat } from "@courtloom/tennis";

/** How a point ended, told of its last shot. */
export type Ending =
  | { readonly type: "winner" }
  /** It forced the opponent's miss, which was not drawn. */
  | { readonly type: "forced" }
  /** `miss` is absent where the ball was called out and nobody said on which side. */
  | { readonly type: "missed"; readonly miss?: Miss }
  /** Key balls: the very last shot was the other player's and was not drawn; who won by it. */
  | { readonly type: "undrawn"; readonly winner: Side };

/** A point while it is charted. Members that nobody answered are absent, never a default. */
export interface PointDraft {
  /** Faults before the serve that counts. */
  readonly faults: 0 | 1;
  readonly lets: number;
  readonly serve?: ServeOutcome;
  /** After the serve, in order, without results: the ending is told once, of the last. */
  readonly shots: readonly Shot[];
  /** What a person said; `open` when a person took back what the drawing says. */
  readonly said?: Ending | "open";
  readonly missForced?: boolean;
  /** Key balls: balls that sat up and were kept, at least 1. */
  readonly satUpKept?: number;
}

/** What a drawing is read by. */
export interface PointFrame {
  readonly server: Side;
  readonly seat: Seat;
  readonly endOfA: EndSeen;
  /** Key balls: whose balls are charted. Absent at every ball, where both players' are. */
  readonly subject?: Side;
}

export const EMPTY_DRAFT: PointDraft = { faults: 0, lets: 0, shots: [] };

/** True when nothing of this point was charted yet. */
export const isEmptyDraft = (draft: PointDraft): boolean =>
  draft.faults === 0 &&
  draft.lets === 0 &&
  draft.serve === undefined &&
  draft.shots.length === 0 &&
  draft.satUpKept === undefined;

/** The serve came into play, as far as somebody said so. */
export const isServeIn = ({ serve }: Pick<PointDraft, "serve">): boolean =>
  serve === "firstIn" || serve === "secondIn";
