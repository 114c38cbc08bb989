import {
  type Ball,
  type BehindFigure,
  behindFigure,
  FIGURE_NAMES,
  type FigureName,
} from "@courtloom/decisions";
import { scoreLine } from "@courtloom/tennis";
import { z } from "zod";
import { idField } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";
import type { BehindBall, FigurePoint, FigurePoints } from "./figure-points.ts";
import { historyFilterField } from "./history-filter.ts";
import { pickedOf, type ReadMatch, readHistory } from "./read-history.ts";

const MOST_ROWS = 100;

const input = z.strictObject({
  playerId: idField,
  figureId: z.enum(FIGURE_NAMES as readonly [FigureName, ...FigureName[]], "Choose a figure."),
  filter: historyFilterField,
  /** As the figure's `parts` name it. */
  part: z.string().max(80, "Choose a part.").optional(),
  /** True: only those in x. False: only the others. */
  hits: z.boolean().optional(),
  from: z.int().min(0).max(1_000_000).default(0),
  limit: z.int().min(1).max(MOST_ROWS).default(30),
});

const toBall = (ball: Ball): BehindBall => ({
  kind: ball.kind,
  depth: ball.depth,
  side: ball.side,
  choice: ball.choice ?? null,
  missed: ball.missed,
  result: ball.result ?? null,
  ballHeight: ball.ballHeight ?? null,
  ballTime: ball.ballTime ?? null,
  opponent: ball.opponent ?? null,
  verdict: ball.judgement.verdict,
});

interface Attempt {
  readonly match: ReadMatch;
  readonly behind: BehindFigure;
}

const attemptsOf = (
  matches: readonly ReadMatch[],
  figureId: FigureName,
  part: string | undefined,
): readonly Attempt[] =>
  matches.flatMap((match) =>
    behindFigure(match.folded.view, match.row.side, figureId)
      .filter((behind) => match.picked.levelOf.has(behind.pointId))
      .filter((behind) => part === undefined || behind.part === part)
      .map((behind) => ({ match, behind })),
  );

const toPoint = ({ match: { row, folded }, behind }: Attempt): readonly FigurePoint[] => {
  const viewed = folded.view.points[behind.at];
  if (!viewed) return [];
  const { matchId, playedOn, title, opponent, side } = row;
  const { pointId, hit } = behind;
  return [
    {
      ...{ matchId, playedOn, title, pointId, hit },
      opponentName: opponent.displayName,
      pointNo: behind.at + 1,
      score: scoreLine(viewed.before, side),
      isServing: viewed.server === side,
      level: viewed.point.level,
      part: behind.part ?? null,
      won: behind.won ?? null,
      ball: behind.ball ? toBall(behind.ball) : null,
    },
  ];
};

/** The points that a figure stands on, a page of them: exactly as many as it counts. Rule HF9. */
export const pointsBehind = staffProcedure
  .input(input)
  .query(
    async ({
      ctx,
      input: { playerId, figureId, filter, part, hits, from, limit },
    }): Promise<FigurePoints> => {
      const history = await readHistory(ctx, playerId, filter);
      const attempts = attemptsOf(pickedOf(history.matches, filter), figureId, part);
      const wanted = hits === undefined ? attempts : attempts.filter(({ behind }) => behind.hit === hits);
      const end = from + limit;
      return {
        figureId,
        x: attempts.filter(({ behind }) => behind.hit).length,
        n: attempts.length,
        rows: wanted.slice(from, end).flatMap(toPoint),
        next: end < wanted.length ? end : null,
      };
    },
  );
