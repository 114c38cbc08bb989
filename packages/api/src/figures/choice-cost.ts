import type { EstimateRow } from "@courtloom/decisions";
import type { FitRow } from "./line-map.ts";

/** Where the chances on serve behind match chances come from. */
export interface ServeBasisRow {
  /** The share of points on serve that is taken for both, in [0, 1], before the match itself is looked at. */
  readonly before: number;
  readonly source: "academy" | "default";
}

/** What choices off the plan went with. */
export interface ChoiceCost {
  readonly player: { readonly playerId: string; readonly displayName: string };
  readonly fit: FitRow | null;
  /** Balls off the plan that it is of, and all balls judged right or wrong; every ball only. */
  readonly offPlan: number;
  readonly judged: number;
  readonly matches: number;
  /** Points that went with them; null without a fit or without such a ball. Not distinguishable: say no number. */
  readonly points: EstimateRow | null;
  /** The same in chances to win the match, each ball by how much its point decided; in matches. */
  readonly matchChances: EstimateRow | null;
  readonly serve: ServeBasisRow;
}
