import type { Side } from "@courtloom/core";
import type { Miss, ServeOutcome, Shot } from "@courtloom/match-log";
import type { EndSeen, Seat } from "@courtloom/tennis";

/** How a point ended, told of its last shot. */
export type Ending =
  | { readonly type: "winner" }
  /** It forced the opponent's miss, which was not drawn. */
  | { readonly type: "forced" }
  | { readonly type: "missed"; readonly miss: Miss };

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
}

/** What a drawing is read by. */
export interface PointFrame {
  readonly server: Side;
  readonly seat: Seat;
  readonly endOfA: EndSeen;
}

export const EMPTY_DRAFT: PointDraft = { faults: 0, lets: 0, shots: [] };

/** True when nothing of this point was charted yet. */
export const isEmptyDraft = (draft: PointDraft): boolean =>
  draft.faults === 0 && draft.lets === 0 && draft.serve === undefined && draft.shots.length === 0;
