import { byPlayer } from "@courtloom/core";
import type { MatchView } from "@courtloom/match-log";
import type { Ball } from "../balls/ball.ts";
import { readBalls } from "../balls/read-balls.ts";
import { plansOf } from "./plans-of.ts";

/**
 * Every counted ball of a match in order, with what its striker's plan says of it; a side without figures is judged
 * as without a plan. SPEC D12.
 */
export const ballsOf = (view: MatchView): readonly Ball[] => {
  const plans = plansOf(view);
  const hands = byPlayer((side) => view.opened.players[side].hand);
  return view.points.flatMap((viewed) => readBalls(viewed, hands, plans));
};
