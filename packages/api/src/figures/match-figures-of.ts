import { type ByPlayer, byPlayer, type Side } from "@courtloom/core";
import {
  type AcademyFit,
  costOfChoices,
  FIGURE_NAMES,
  importancesOf,
  pointSizes,
  rateRow,
  type ServeBefore,
  serveBefore,
  unitOf,
} from "@courtloom/decisions";
import type { MatchOpened } from "@courtloom/match-log";
import { scoreLine } from "@courtloom/tennis";
import { z } from "zod";
import type { MatchRow } from "../api-store.ts";
import { failure } from "../errors/failure.ts";
import { idField } from "../fields.ts";
import { toDeskMatch } from "../match/desk-match.ts";
import { type StaffContext, staffProcedure } from "../procedure.ts";
import type { ChoiceCost } from "./choice-cost.ts";
import type { FoldedMatch } from "./folded-match.ts";
import type { MatchFigureRow, MatchFiguresFile, SizedPoint } from "./match-figures.ts";
import { type ReadFit, readFit } from "./read-fit.ts";

const MOST_BIGGEST = 5;

const headOf = async ({ log, staff }: StaffContext, matchId: string): Promise<number> => {
  const read = await log.read({ academyId: staff.academyId, matchId, after: 0, limit: 1 });
  if (!read.ok) throw failure(read.error.code);
  return read.value.head;
};

const foldedOf = async (ctx: StaffContext, matchId: string): Promise<FoldedMatch | undefined> => {
  const head = await headOf(ctx, matchId);
  if (head === 0) return undefined;
  const folded = await ctx.history.folded(ctx.store, ctx.staff.academyId, [{ matchId, head }]);
  return folded.get(matchId);
};

/** The fit that the match froze; for one that began before there was any, the newest. */
const fitOf = async (ctx: StaffContext, opened: MatchOpened | undefined): Promise<ReadFit> => {
  const version = Number(opened?.fitVersion ?? Number.NaN);
  const frozen = Number.isInteger(version) ? await readFit(ctx, version) : undefined;
  return frozen?.row ? frozen : readFit(ctx);
};

const figuresOf = ({ figures }: FoldedMatch): ByPlayer<readonly MatchFigureRow[] | null> =>
  byPlayer((side) => {
    const mine = figures()[side];
    if (!mine) return null;
    return FIGURE_NAMES.map((id) => ({ id, unit: unitOf(id), ...rateRow(mine[id]) }));
  });

interface Weighing {
  readonly card: MatchRow;
  readonly folded: FoldedMatch;
  readonly importances: readonly number[];
  readonly fit: AcademyFit | undefined;
  readonly row: ReadFit["row"];
  readonly serve: ServeBefore;
}

const costOf = (side: Side, { card, folded, importances, fit, row, serve }: Weighing): ChoiceCost | null => {
  if (!folded.figures()[side]) return null;
  const { playerId, displayName } = card.players[side];
  const balls = folded.choices(side).map((ball) => ({ ...ball, importance: importances[ball.at] ?? 0 }));
  const isEvery = folded.view.points.some(({ point }) => point.level === "every");
  return {
    player: { playerId, displayName },
    fit: row,
    matches: isEvery ? 1 : 0,
    serve,
    ...costOfChoices(fit, balls),
  };
};

const sizedPoints = ({ view }: FoldedMatch, importances: readonly number[]): readonly SizedPoint[] => {
  const sizes = pointSizes(importances);
  return view.points.flatMap((viewed, at) => {
    const size = sizes[at];
    if (!size) return [];
    const { id: pointId, before, server, point } = viewed;
    return [
      { pointId, pointNo: at + 1, score: scoreLine(before, "A"), server, winner: point.winner, ...size },
    ];
  });
};

const biggestOf = (points: readonly SizedPoint[]): readonly string[] =>
  points
    .toSorted((a, b) => a.rank - b.rank || a.pointNo - b.pointNo)
    .slice(0, MOST_BIGGEST)
    .map(({ pointId }) => pointId);

/** One match's figures, the size of each point, and what choices off the plan went with. Rules HF17, HF18. */
export const matchFigures = staffProcedure
  .input(z.strictObject({ matchId: idField }))
  .query(async ({ ctx, input: { matchId } }): Promise<MatchFiguresFile> => {
    const { academyId } = ctx.staff;
    const card = await ctx.store.matchCard({ academyId, matchId });
    if (card === undefined) throw failure("unknown_match");
    const { stage, names } = toDeskMatch(card);
    const folded = await foldedOf(ctx, matchId);
    const { fit, row } = await fitOf(ctx, folded?.view.opened);
    const serve = serveBefore(fit);
    const none = { A: null, B: null };
    if (!folded) return { matchId, stage, names, figures: none, cost: none, points: [], biggest: [], serve };
    const importances = importancesOf(folded.view, serve);
    const points = sizedPoints(folded, importances);
    const weighing = { card, folded, importances, fit, row, serve };
    return {
      ...{ matchId, stage, names, points, serve },
      figures: figuresOf(folded),
      cost: byPlayer((side) => costOf(side, weighing)),
      biggest: biggestOf(points),
    };
  });
