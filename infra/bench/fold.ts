import { byPlayer, SIDES } from "@courtloom/core";
import {
  figuresOf,
  freezeOpening,
  type PastTallies,
  STARTER_PLAN,
  type Tally,
  talliesOf,
  watchesOf,
} from "@courtloom/decisions";
import { createRandom, DEMO_CHARTISTS, type DemoMatch, playSeasons } from "@courtloom/demo";
import {
  DESK_LANE,
  foldLog,
  type LoggedEntry,
  type MatchOpened,
  type MatchView,
  RATES,
} from "@courtloom/match-log";
import type { Comparison } from "./compare.ts";

const MATCHES = 24;
const NO_PAST: PastTallies = { own: { A: [], B: [] }, academy: [] };
const PLAN = { planId: "bench", version: 1, rules: STARTER_PLAN };
const WATCHED = { rates: RATES.slice(0, 4), alpha: 0.05, quiet: false };

const logOf = (match: DemoMatch, body: MatchOpened): LoggedEntry[] => [
  {
    pos: 1,
    laneId: DESK_LANE,
    epoch: 0,
    entry: { v: 1, id: match.matchId, n: 1, atMs: 0, wallMs: 0, body },
  },
  ...match.entries.map((entry, i) => ({ pos: i + 2, laneId: match.laneId, epoch: 1, entry })),
];

const viewOf = (log: readonly LoggedEntry[]): MatchView => {
  const view = foldLog(log);
  if (!view.ok) throw new Error(view.error);
  return view.value;
};

const openingOf = (
  { matchId, format, firstServer, playerIds }: DemoMatch,
  past: PastTallies,
  isWatched: boolean,
) =>
  freezeOpening({
    matchId,
    format,
    firstServer,
    players: byPlayer((side) => ({ playerId: playerIds[side], hand: "right", own: true })),
    doubles: false,
    coachingMode: "practice",
    past,
    plans: byPlayer(() => PLAN),
    ...(isWatched ? { watches: byPlayer(() => WATCHED) } : {}),
  });

/** Logs as they are kept on a day in mid-season: both players with a plan and watches. */
const plannedLogs = (matches: readonly DemoMatch[]): LoggedEntry[][] => {
  const academy = matches.flatMap((match) => {
    const tallies = talliesOf(viewOf(logOf(match, openingOf(match, NO_PAST, false))));
    return SIDES.flatMap((side): Tally[] => (tallies[side] ? [tallies[side]] : []));
  });
  const past: PastTallies = { own: { A: academy.slice(0, 12), B: academy.slice(12, 24) }, academy };
  const [first] = matches;
  // A watch takes tenths of a second to freeze; what it costs to follow does not depend on whose it is.
  const watches = first ? openingOf(first, past, true).watches : [];
  if (watches.length < 6)
    throw new Error(`Only ${watches.length} watches could be frozen: too little is charted.`);
  return matches.map((match) => logOf(match, { ...openingOf(match, past, false), watches }));
};

/** Score, figures and alerts of whole logs, every ball charted, against reading the same logs' text. SPEC BN2. */
export const foldAgainstParse = (): Comparison => {
  const logs = plannedLogs(playSeasons(createRandom(1), 1_790_000_000_000, DEMO_CHARTISTS).slice(0, MATCHES));
  const texts = logs.map((log) => JSON.stringify(log));
  return {
    name: `fold of ${MATCHES} logs, score, figures and alerts`,
    floorName: "JSON.parse of the same logs",
    bar: 3,
    floor: () => {
      for (const text of texts) JSON.parse(text);
    },
    ours: () => {
      for (const log of logs) {
        const view = viewOf(log);
        figuresOf(view);
        watchesOf(view);
      }
    },
  };
};
