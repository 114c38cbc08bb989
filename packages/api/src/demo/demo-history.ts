import { type ByPlayer, byPlayer } from "@courtloom/core";
import { freezeOpening, type Tally, talliesOf } from "@courtloom/decisions";
import { DEMO_PLAYERS, DEMO_VISITORS, type DemoMatch } from "@courtloom/demo";
import {
  DESK_LANE,
  type FrozenPlan,
  foldLog,
  type LoggedEntry,
  type MatchOpened,
  type OpenedPlayer,
} from "@courtloom/match-log";
import type { Surface } from "@courtloom/tennis";
import type { DemoStore } from "./demo-store.ts";

type Imported = Parameters<DemoStore["importMatches"]>[0]["matches"][number];

/** Tallies so far, so that each match freezes what was usual on its own day and nothing later. */
export interface Past {
  /** What was agreed with every player. */
  readonly plan: FrozenPlan;
  readonly byPlayerId: Map<string, Tally[]>;
  readonly academy: Tally[];
}

const HANDS = new Map(DEMO_PLAYERS.map((player) => [player.id, player.hand]));
const LEVELS = new Map([...DEMO_PLAYERS, ...DEMO_VISITORS].map(({ id, level }) => [id, level]));

const levelOf = (demoId: string): Pick<OpenedPlayer, "level"> => {
  const level = LEVELS.get(demoId);
  return level === undefined ? {} : { level };
};

const openedPlayer = (demoId: string, ids: ReadonlyMap<string, string>): OpenedPlayer => ({
  playerId: ids.get(demoId) ?? demoId,
  hand: HANDS.get(demoId) ?? "unknown",
  own: HANDS.has(demoId),
  ...levelOf(demoId),
});

/** The academy plays on clay from April to September, and on hard courts in winter. */
const surfaceOf = (date: string): Surface => {
  const month = Number(date.slice(5, 7));
  return month >= 4 && month <= 9 ? "clay" : "hard";
};

const open = (match: DemoMatch, players: ByPlayer<OpenedPlayer>, past: Past): MatchOpened =>
  freezeOpening({
    matchId: match.matchId,
    format: match.format,
    firstServer: match.firstServer,
    players,
    doubles: false,
    coachingMode: "practice",
    plans: byPlayer((side) => (players[side].own ? past.plan : null)),
    past: {
      own: byPlayer((side) => past.byPlayerId.get(players[side].playerId) ?? []),
      academy: past.academy,
    },
  });

const tally = (match: DemoMatch, opened: MatchOpened, past: Past): Imported["tallies"] => {
  const opening = { v: 1, id: match.matchId, n: 1, atMs: 0, wallMs: match.startMs, body: opened } as const;
  const log: LoggedEntry[] = [
    { pos: 1, laneId: DESK_LANE, epoch: 0, entry: opening },
    ...match.entries.map((entry, i) => ({ pos: i + 2, laneId: match.laneId, epoch: 1, entry })),
  ];
  const view = foldLog(log);
  if (!view.ok) return [];
  const counted = talliesOf(view.value);
  return (["A", "B"] as const).flatMap((side) => {
    const mine = counted[side];
    if (!mine) return [];
    const { playerId } = opened.players[side];
    past.byPlayerId.set(playerId, [...(past.byPlayerId.get(playerId) ?? []), mine]);
    past.academy.push(mine);
    return [{ playerId, version: String(mine.version), tally: mine }];
  });
};

/** A played match as the store takes it in, with its tallies counted by the same fold that serves live. Adds to `past`. */
export const toImport = (match: DemoMatch, ids: ReadonlyMap<string, string>, past: Past): Imported => {
  const players = byPlayer((side) => openedPlayer(match.playerIds[side], ids));
  const opened = open(match, players, past);
  const playedOn = new Date(match.startMs).toISOString().slice(0, 10);
  return {
    match: {
      dayId: null,
      courtId: null,
      title: "Match play",
      playedOn,
      surface: surfaceOf(playedOn),
      playerIds: byPlayer((side) => players[side].playerId),
      format: match.format,
      firstServer: match.firstServer,
      coachingMode: "practice",
    },
    opened,
    laneId: match.laneId,
    chartist: match.chartist,
    entries: match.entries,
    sealed: true,
    over: true,
    openedMs: match.startMs,
    tallies: tally(match, opened, past),
  };
};
