import { byPlayer, type Side } from "@courtloom/core";
import type { MatchView } from "@courtloom/match-log";
import { plansOf } from "./plans-of.ts";
import type { PlayedPoint } from "./played-point.ts";
import { playedPoints } from "./played-points.ts";

/** A point of a view as one of its players with figures played it. */
export interface Played {
  readonly side: Side;
  /** Index in the view's points. */
  readonly at: number;
  readonly point: PlayedPoint;
}

/**
 * Reading shots is most of what a fold costs, and figures and watches ask for the same view one after the other. More
 * than the last one is not kept: what lives on costs more to collect than it saves.
 */
let last: { readonly view: MatchView; readonly played: readonly Played[] } | undefined;

/** Every counted point of a view in the order of play, side A's reading before side B's. */
export const playedOf = (view: MatchView): readonly Played[] => {
  if (last?.view === view) return last.played;
  const plans = plansOf(view);
  const hands = byPlayer((side) => view.opened.players[side].hand);
  const played: Played[] = [];
  for (let at = 0; at < view.points.length; at += 1) {
    const viewed = view.points[at];
    if (viewed) playedPoints(viewed, hands, plans, (side, point) => played.push({ side, at, point }));
  }
  last = { view, played };
  return played;
};
