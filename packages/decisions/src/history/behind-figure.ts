import type { Side } from "@courtloom/core";
import type { MatchView } from "@courtloom/match-log";
import type { Ball } from "../balls/ball.ts";
import { isOfClass } from "../figures/ball-class.ts";
import { playedOf } from "../figures/played-of.ts";
import type { PlayedPoint } from "../figures/played-point.ts";
import { FIGURES, type FigureName } from "../figures/registry.ts";

/** One attempt of a figure, with the ball that it is; a point has none, nor a moment that was only counted. */
export interface BehindFigure {
  /** Index of its point in the view. */
  readonly at: number;
  readonly pointId: string;
  readonly hit: boolean;
  readonly part: string | undefined;
  readonly won: boolean | undefined;
  readonly ball: Ball | undefined;
}

type Attempt = Pick<BehindFigure, "hit" | "part" | "ball">;

const attemptsIn = (figure: FigureName, point: PlayedPoint): readonly Attempt[] => {
  const def = FIGURES[figure];
  if (!def.levels.includes(point.level)) return [];
  if (def.unit === "points") {
    const hit = def.hit(point);
    return hit === undefined ? [] : [{ hit, part: def.part?.(point), ball: undefined }];
  }
  const told = point.balls.flatMap((ball): Attempt[] => {
    const hit = isOfClass(ball, def.of) ? def.hit(ball, point) : undefined;
    if (hit === undefined) return [];
    return [{ hit, part: def.unit === "balls" ? def.part?.(ball) : undefined, ball }];
  });
  if (def.unit === "balls") return told;
  const counted = { hit: def.isCountedHit, part: undefined, ball: undefined };
  return [...told, ...Array.from({ length: def.counted(point) }, () => counted)];
};

/** What a player's figure stands on in one match, in the order of play; its hits are x, all are n. SPEC HF9. */
export const behindFigure = (view: MatchView, side: Side, figure: FigureName): readonly BehindFigure[] => {
  return playedOf(view).flatMap(({ side: whose, at, point }): BehindFigure[] => {
    if (whose !== side) return [];
    const { id: pointId, won } = point;
    return attemptsIn(figure, point).map((attempt) => ({ at, pointId, won, ...attempt }));
  });
};
