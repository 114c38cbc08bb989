import type { ByPlayer, Side } from "@courtloom/core";
import type { Entry } from "@courtloom/match-log";
import type { MatchFormat } from "@courtloom/tennis";
import { playMatch } from "./play-match.ts";
import type { Random } from "./random.ts";
import { DEMO_PLAYERS, DEMO_VISITORS, type Temper } from "./roster.ts";

export const DEMO_FORMAT: MatchFormat = {
  sets: 3,
  gamesPerSet: 6,
  tiebreakAt: 6,
  tiebreakTo: 7,
  noAd: false,
  finalSet: { kind: "matchTiebreak", to: 10 },
};

export interface DemoMatch {
  readonly matchId: string;
  readonly playerIds: ByPlayer<string>;
  readonly firstServer: Side;
  readonly format: MatchFormat;
  readonly startMs: number;
  readonly chartist: string;
  readonly laneId: string;
  readonly entries: readonly Entry[];
}

const DAY_MS = 86_400_000;
const SEASONS = 2;
/** Each season's match days, counted back from today, leave a summer and a winter break. */
const DAYS_PER_SEASON = 10;
const DAYS_BETWEEN = 21;

interface Entrant {
  readonly id: string;
  readonly level: number;
  readonly temper: Temper;
  /** A player of the academy. */
  readonly own: boolean;
}

const visitors: readonly Entrant[] = DEMO_VISITORS.map((v) => ({ ...v, temper: "steady", own: false }));
const players: readonly Entrant[] = DEMO_PLAYERS.map((player) => ({ ...player, own: true }));

const shuffled = <T>(random: Random, from: readonly T[]): T[] => {
  const rest = [...from];
  return rest.map((_, i) => {
    const j = random.whole(i, rest.length - 1);
    const at = rest[j];
    const here = rest[i];
    if (at !== undefined && here !== undefined) {
      rest[j] = here;
      rest[i] = at;
    }
    return rest[i] as T;
  });
};

/** Plays one match of two entrants through to its end. */
export const demoMatch = (
  random: Random,
  pair: ByPlayer<Entrant>,
  when: { readonly startMs: number; readonly chartist: string },
): DemoMatch => {
  const firstServer: Side = random.chance(0.5) ? "A" : "B";
  return {
    matchId: random.uuid(),
    laneId: random.uuid(),
    playerIds: { A: pair.A.id, B: pair.B.id },
    firstServer,
    format: DEMO_FORMAT,
    ...when,
    entries: playMatch(random, { format: DEMO_FORMAT, firstServer, sides: pair, startMs: when.startMs }),
  };
};

/** The matches of one day: half the players against each other, some against visitors. */
const dayMatches = (random: Random, startMs: number, chartists: readonly string[]): DemoMatch[] => {
  const order = shuffled<Entrant>(random, players);
  const matches: DemoMatch[] = [];
  for (let i = 0; i + 2 < order.length; i += 3) {
    const [a, b, c] = [order[i], order[i + 1], order[i + 2]];
    const visitor = visitors[random.whole(0, visitors.length - 1)];
    if (!a || !b || !c || !visitor) continue;
    const chartist = chartists[matches.length % chartists.length] ?? "";
    matches.push(demoMatch(random, { A: a, B: b }, { startMs, chartist }));
    matches.push(demoMatch(random, { A: c, B: visitor }, { startMs: startMs + 2 * 3_600_000, chartist }));
  }
  return matches;
};

/**
 * Two seasons of charted matches before `todayMs` (midnight of the demo's day), oldest first. Each player
 * has about twenty; every one is a whole log, so that each figure of the past opens its points.
 */
export const playSeasons = (random: Random, todayMs: number, chartists: readonly string[]): DemoMatch[] => {
  const matches: DemoMatch[] = [];
  for (let season = SEASONS; season >= 1; season -= 1) {
    for (let day = DAYS_PER_SEASON; day >= 1; day -= 1) {
      const daysAgo = (season - 1) * 365 + day * DAYS_BETWEEN;
      const startMs = todayMs - daysAgo * DAY_MS + 9 * 3_600_000;
      matches.push(...dayMatches(random.fork(`${season}/${day}`), startMs, chartists));
    }
  }
  return matches;
};
