import type { Side } from "@courtloom/core";
import type { MatchView } from "@courtloom/match-log";
import {
  createWinChances,
  type PointSize,
  pointSize,
  serveChanceNow,
  type WinChances,
} from "@courtloom/tennis";
import { DEFAULT_SERVE, type ServeBefore } from "./serve-before.ts";

/** Chances on serve are read to so much: a rank does not feel less, and matches share their tables. */
const STEP = 0.02;

const rounded = (chance: number): number => Math.round(chance / STEP) * STEP;

const servePoints = (view: MatchView, side: Side): { readonly won: number; readonly played: number } => {
  const served = view.points.filter(({ server }) => server === side);
  return { won: served.filter(({ point }) => point.winner === side).length, played: served.length };
};

/** The chances of a match as its points so far tell them, beginning from the share before it. */
const chancesOf = (view: MatchView, { before }: ServeBefore): WinChances => {
  const now = (side: Side) => rounded(serveChanceNow(before, servePoints(view, side)));
  return createWinChances(view.opened.format, now("A"), now("B"));
};

/** How much of the match rested on each point, in [0, 1]; 0 where that cannot be told. In the order of play. SPEC HF17. */
export const importancesOf = (view: MatchView, serve: ServeBefore = DEFAULT_SERVE): readonly number[] => {
  const chances = chancesOf(view, serve);
  return view.points.map(({ before }) => chances.importance(before)?.inMatch ?? 0);
};

/** Each point of a match as a rank among all of them. SPEC HF17. */
export const pointSizes = (importances: readonly number[]): readonly PointSize[] =>
  importances.flatMap((importance) => pointSize(importance, importances) ?? []);

/** The size of the point to be played, and whose share of points on serve it begins from. */
export interface PointSizeNow extends PointSize {
  readonly source: ServeBefore["source"];
}

/**
 * The point to be played as a rank among the points so far and itself; `undefined` after the end. For staff alone.
 * SPEC HF19.
 */
export const pointSizeNow = (
  view: MatchView,
  serve: ServeBefore = DEFAULT_SERVE,
): PointSizeNow | undefined => {
  const chances = chancesOf(view, serve);
  const now = chances.importance(view.score)?.inMatch;
  if (now === undefined) return undefined;
  const before = view.points.map((point) => chances.importance(point.before)?.inMatch ?? 0);
  const size = pointSize(now, [...before, now]);
  return size && { ...size, source: serve.source };
};
