import {
  academyRateOf,
  FIGURE_NAMES,
  type FigureName,
  historyCount,
  historyFigure,
  OPPONENT_LEVELS,
  type PickedMatch,
  rateRow,
  tallyCount,
  unitOf,
  usualOf,
} from "@courtloom/decisions";
import { CHARTING_LEVELS } from "@courtloom/match-log";
import { describeSets } from "@courtloom/tennis";
import { z } from "zod";
import { idField } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";
import type { FigureRow, UsualRow } from "./figure-row.ts";
import { type HistoryFilter, historyFilterField } from "./history-filter.ts";
import type { FilterChoices, HistoryMatch } from "./history-match.ts";
import type { PlayerHistory } from "./player-history.ts";
import { type ReadFit, readFit } from "./read-fit.ts";
import { pickedOf, type ReadMatch, readHistory } from "./read-history.ts";

const chartistsOf = ({ folded: { view, chartists } }: ReadMatch): readonly string[] =>
  [...new Set(view.points.flatMap(({ laneId }) => chartists.get(laneId) ?? []))].sort();

const toHistoryMatch = (match: ReadMatch): HistoryMatch => {
  const { row, folded, format, opponentLevel, picked } = match;
  const { opened, score, points } = folded.view;
  const levels = new Set(points.map(({ point }) => point.level));
  const { matchId, title, playedOn, side, opponent, surface } = row;
  return {
    ...{ matchId, title, playedOn, side, opponent, opponentLevel, surface, format },
    levelThen: opened.players[side].level ?? null,
    opponentLevelThen: opened.players[side === "A" ? "B" : "A"].level ?? null,
    levels: CHARTING_LEVELS.filter((level) => levels.has(level)),
    chartists: chartistsOf(match),
    points: points.length,
    pointsUsed: picked.levelOf.size,
    score: describeSets(score, side),
  };
};

const distinct = <T>(values: readonly T[]): readonly T[] => [...new Set(values)];

const choicesOf = (matches: readonly ReadMatch[]): FilterChoices => {
  const of = matches.map(toHistoryMatch);
  const met = new Set(of.map(({ opponentLevel }) => opponentLevel));
  const levels = new Set(of.flatMap((match) => match.levels));
  return {
    first: of.at(-1)?.playedOn ?? null,
    last: of[0]?.playedOn ?? null,
    opponents: OPPONENT_LEVELS.filter((level) => met.has(level)),
    surfaces: distinct(of.map(({ surface }) => surface ?? ("notKnown" as const))),
    formats: distinct(of.map(({ format }) => format)),
    levels: CHARTING_LEVELS.filter((level) => levels.has(level)),
    chartists: distinct(of.flatMap((match) => match.chartists)).toSorted(),
  };
};

/** From all of the player's matches beside the academy's sum, which was kept when the academy was fitted last. */
const usualRow = (name: FigureName, matches: readonly ReadMatch[], { fit }: ReadFit): UsualRow | null => {
  if (!fit) return null;
  const past = matches.map(({ folded, row }) => {
    const { x = 0, n = 0 } = folded.figures()[row.side]?.[name] ?? {};
    return { x, n };
  });
  const usual = usualOf(past, academyRateOf(tallyCount(fit.academy, name)).mean);
  return usual ? { mean: usual.mean, low: usual.low, high: usual.high, source: usual.source } : null;
};

const byOpponent = (name: FigureName, matches: readonly ReadMatch[]): FigureRow["byOpponent"] => {
  const of = (level: (typeof OPPONENT_LEVELS)[number]) => {
    const apart = matches.filter(({ isPicked, opponentLevel }) => isPicked && opponentLevel === level);
    return historyCount(
      apart.map(({ picked }) => picked),
      name,
    );
  };
  return { similar: of("similar"), stronger: of("stronger"), weaker: of("weaker"), notKnown: of("notKnown") };
};

const figureRow = (
  name: FigureName,
  picked: readonly PickedMatch[],
  all: readonly ReadMatch[],
  fit: ReadFit,
): FigureRow => {
  const { x, n, parts, ...more } = historyFigure(picked, name);
  return {
    id: name,
    unit: unitOf(name),
    ...rateRow({ x, n }),
    ...more,
    usual: usualRow(name, all, fit),
    byOpponent: byOpponent(name, all),
    parts: parts.map(({ part, ...count }) => ({ part, ...rateRow(count) })),
  };
};

const input = z.strictObject({ playerId: idField, filter: historyFilterField });

/** A player's figures over the charted matches that a filter picks, with those matches. Rules HF1 to HF8. */
export const playerFigures = staffProcedure
  .input(input)
  .query(async ({ ctx, input: { playerId, filter } }): Promise<PlayerHistory> => {
    const [history, fit] = await Promise.all([readHistory(ctx, playerId, filter), readFit(ctx)]);
    const matches = pickedOf(history.matches, filter).filter(({ picked }) => picked.levelOf.size > 0);
    const picked = matches.map((match) => match.picked);
    const { displayName, level } = history.player;
    return {
      player: { playerId, displayName, level },
      filter: filter satisfies HistoryFilter,
      choices: choicesOf(history.matches),
      figures: FIGURE_NAMES.map((name) => figureRow(name, picked, history.matches, fit)),
      matches: matches.map(toHistoryMatch),
      matchesInAll: history.matches.length,
      onlyLatest: history.onlyLatest,
      unreadable: history.unreadable,
    };
  });
