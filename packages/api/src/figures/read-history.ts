import { type OpponentLevel, opponentLevelOf, type PickedMatch, pickMatch } from "@courtloom/decisions";
import type { ViewedPoint } from "@courtloom/match-log";
import type { PlayerFile } from "../api-store.ts";
import { failure } from "../errors/failure.ts";
import { describeFormat } from "../match/describe-format.ts";
import type { StaffContext } from "../procedure.ts";
import type { ChartedMatchRow } from "./figure-store.ts";
import type { FoldedMatch } from "./folded-match.ts";
import type { HistoryFilter } from "./history-filter.ts";

/** So many of a player's matches are looked at, the latest: several seasons. */
export const MOST_MATCHES = 200;

/** A match of the player, whole, and what the filter lets through of it. */
export interface ReadMatch {
  readonly row: ChartedMatchRow;
  readonly folded: FoldedMatch;
  readonly format: string;
  readonly opponentLevel: OpponentLevel;
  /** By period, surface and format; the opponent's level is looked at apart. */
  readonly isPicked: boolean;
  /** Points by level and chartist. */
  readonly keeps: (point: ViewedPoint) => boolean;
  readonly picked: PickedMatch;
}

export interface ReadHistory {
  readonly player: PlayerFile;
  /** The latest first, whatever the filter. */
  readonly matches: readonly ReadMatch[];
  readonly onlyLatest: number | null;
  readonly unreadable: number;
}

const isPicked = (row: ChartedMatchRow, format: string, filter: HistoryFilter): boolean =>
  (filter.from === undefined || row.playedOn >= filter.from) &&
  (filter.to === undefined || row.playedOn <= filter.to) &&
  (filter.surface === undefined || (row.surface ?? "notKnown") === filter.surface) &&
  (filter.format === undefined || format === filter.format);

const keeper =
  ({ chartists }: FoldedMatch, { level, chartist }: HistoryFilter) =>
  ({ point, laneId }: ViewedPoint): boolean =>
    (level === undefined || point.level === level) &&
    (chartist === undefined || chartists.get(laneId) === chartist);

const toMatch = (row: ChartedMatchRow, folded: FoldedMatch, filter: HistoryFilter): ReadMatch | undefined => {
  const figures = folded.figures()[row.side];
  if (!figures) return undefined;
  const format = describeFormat(row.format);
  const keeps = keeper(folded, filter);
  return {
    row,
    folded,
    format,
    opponentLevel: opponentLevelOf(folded.view.opened, row.side),
    isPicked: isPicked(row, format, filter),
    keeps,
    picked: pickMatch(folded.view, figures, keeps),
  };
};

const ownPlayer = async ({ store, staff }: StaffContext, playerId: string): Promise<PlayerFile> => {
  const players = await store.listPlayers({ academyId: staff.academyId, ownOnly: true });
  const player = players.find((each) => each.playerId === playerId);
  if (!player) throw failure("unknown_player");
  return player;
};

/** An own player's charted matches, folded. */
export const readHistory = async (
  ctx: StaffContext,
  playerId: string,
  filter: HistoryFilter,
): Promise<ReadHistory> => {
  const { academyId } = ctx.staff;
  const player = await ownPlayer(ctx, playerId);
  // One more than is looked at tells whether there are more.
  const rows = await ctx.store.chartedMatches({ academyId, playerId, limit: MOST_MATCHES + 1 });
  const looked = rows.slice(0, MOST_MATCHES);
  const folded = await ctx.history.folded(ctx.store, academyId, looked);
  const matches = looked.flatMap((row) => {
    const match = folded.get(row.matchId);
    return (match && toMatch(row, match, filter)) ?? [];
  });
  return {
    player,
    matches,
    onlyLatest: rows.length > MOST_MATCHES ? MOST_MATCHES : null,
    unreadable: looked.length - matches.length,
  };
};

/** The matches that the whole filter lets through. */
export const pickedOf = (matches: readonly ReadMatch[], { opponent }: HistoryFilter): readonly ReadMatch[] =>
  matches.filter((match) => match.isPicked && (opponent === undefined || match.opponentLevel === opponent));
