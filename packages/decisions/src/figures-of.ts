import { type ByPlayer, byPlayer, type Side } from "@courtloom/core";
import type { MatchView, ViewedPoint } from "@courtloom/match-log";
import type { Hand } from "@courtloom/tennis";
import { countedShots } from "./counted-shots.ts";
import type { Count, MatchFigures, PlayerFigures } from "./figures.ts";

interface Counting {
  x: number;
  n: number;
  hits: string[];
  others: string[];
}

interface PlayerCounting {
  readonly lineMissed: Counting;
  readonly lineShare: Counting;
}

const emptyCounting = (): Counting => ({ x: 0, n: 0, hits: [], others: [] });

const attempt = (counting: Counting, hit: boolean, pointId: string): void => {
  counting.n += 1;
  if (hit) counting.x += 1;
  (hit ? counting.hits : counting.others).push(pointId);
};

const countPoint = (
  counting: ByPlayer<PlayerCounting | undefined>,
  viewed: ViewedPoint,
  hands: ByPlayer<Hand>,
): void => {
  for (const { shot, isLine, missed } of countedShots(viewed, hands)) {
    const mine = counting[shot.striker];
    if (!mine) continue;
    attempt(mine.lineShare, isLine, viewed.id);
    if (isLine) attempt(mine.lineMissed, missed, viewed.id);
  }
};

const toCount = ({ x, n, hits, others }: Counting): Count => ({ x, n, hits, others });

const toFigures = (counting: PlayerCounting | undefined): PlayerFigures | undefined =>
  counting && { lineMissed: toCount(counting.lineMissed), lineShare: toCount(counting.lineShare) };

/** Charted from now on, or in a point that shots were charted of: who was charted once keeps what was counted. */
const isCharted = (view: MatchView, side: Side): boolean =>
  view.subjects.includes(side) ||
  view.points.some(({ point, subjects }) => point.level !== "score" && subjects.includes(side));

/**
 * The figures of a match: a pure function of its view, so corrections need no care here. Sides that are
 * not charted, and players of other academies, have none. SPEC D1 to D6.
 */
export const figuresOf = (view: MatchView): MatchFigures => {
  const isCounted = (side: Side) => view.opened.players[side].own && isCharted(view, side);
  const counting = byPlayer((side) =>
    isCounted(side) ? { lineMissed: emptyCounting(), lineShare: emptyCounting() } : undefined,
  );
  const hands = byPlayer((side) => view.opened.players[side].hand);
  for (const viewed of view.points) countPoint(counting, viewed, hands);
  return byPlayer((side) => toFigures(counting[side]));
};
