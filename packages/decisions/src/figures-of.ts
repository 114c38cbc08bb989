import { type ByPlayer, byPlayer, type Side } from "@courtloom/core";
import type { MatchView, ViewedPoint } from "@courtloom/match-log";
import type { Hand } from "@courtloom/tennis";
import type { Count, MatchFigures, PlayerFigures } from "./figures.ts";
import { feeds } from "./level-feeds.ts";
import { type ReadShot, readShots } from "./read-shots.ts";

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

/** Groundstrokes with a known direction whose outcome nobody disputes. SPEC D3, D4. */
const counts = ({ shot, kind, stroke }: ReadShot): boolean =>
  kind === "groundstroke" && stroke?.direction !== undefined && shot.leftOut === undefined;

const countPoint = (
  counting: ByPlayer<PlayerCounting | undefined>,
  viewed: ViewedPoint,
  hands: ByPlayer<Hand>,
): void => {
  if (!feeds("lineShare", viewed.point.level)) return;
  for (const read of readShots(viewed.point, hands)) {
    const mine = counting[read.shot.striker];
    if (!mine || !counts(read)) continue;
    const isLine = read.stroke?.direction === "line";
    attempt(mine.lineShare, isLine, viewed.id);
    if (isLine) attempt(mine.lineMissed, read.missed, viewed.id);
  }
};

const toCount = ({ x, n, hits, others }: Counting): Count => ({ x, n, hits, others });

const toFigures = (counting: PlayerCounting | undefined): PlayerFigures | undefined =>
  counting && { lineMissed: toCount(counting.lineMissed), lineShare: toCount(counting.lineShare) };

/**
 * The figures of a match: a pure function of its view, so corrections need no care here. Sides that are
 * not charted, and players of other academies, have none. SPEC D1 to D6.
 */
export const figuresOf = (view: MatchView): MatchFigures => {
  const isCounted = (side: Side) => view.opened.players[side].own && view.subjects.includes(side);
  const counting = byPlayer((side) =>
    isCounted(side) ? { lineMissed: emptyCounting(), lineShare: emptyCounting() } : undefined,
  );
  const hands = byPlayer((side) => view.opened.players[side].hand);
  for (const viewed of view.points) countPoint(counting, viewed, hands);
  return byPlayer((side) => toFigures(counting[side]));
};
