import { type ByPlayer, byPlayer, type Side } from "@courtloom/core";
import type { Entry, PointCharted } from "@courtloom/match-log";
import { applyScore, type EndSeen, type MatchFormat, startScore, turnEnds } from "@courtloom/tennis";
import { HABITS, type Habits } from "./habits.ts";
import { playPoint } from "./play-point.ts";
import type { RallyPlayer } from "./rally.ts";
import type { Random } from "./random.ts";
import type { Temper } from "./roster.ts";

export interface DemoMatchSide {
  readonly temper: Temper;
  /** 1 (strongest) to 5. */
  readonly level: number;
  /** A player of the academy, whose balls the chartist is asked about. */
  readonly own: boolean;
  /** Misses line balls far more than usual today. */
  readonly offDay?: boolean;
}

export interface DemoMatchSetting {
  readonly format: MatchFormat;
  readonly firstServer: Side;
  readonly sides: ByPlayer<DemoMatchSide>;
  /** Wall time of the first serve, milliseconds since 1970. */
  readonly startMs: number;
}

/** A level apart changes the chance to miss a ball by about this much. */
const MISS_PER_LEVEL = 0.008;
const MAX_POINTS = 400;

/** On an off day the odds of missing a line ball are about five times the usual ones. */
const OFF_DAY_ODDS = 5;

const offDay = (habits: Habits): Habits => {
  const more = (p: number): number => (OFF_DAY_ODDS * p) / (1 - p + OFF_DAY_ODDS * p);
  const { lineMissOrdinary, lineMissSitsUp } = habits;
  return { ...habits, lineMissOrdinary: more(lineMissOrdinary), lineMissSitsUp: more(lineMissSitsUp) };
};

const habitsOf = ({ temper, offDay: isOff }: DemoMatchSide): Habits =>
  isOff ? offDay(HABITS[temper]) : HABITS[temper];

const rallyPlayers = (sides: ByPlayer<DemoMatchSide>): ByPlayer<RallyPlayer> =>
  byPlayer((side) => ({
    habits: habitsOf(sides[side]),
    missMore: (sides[side].level - (sides.A.level + sides.B.level) / 2) * MISS_PER_LEVEL,
  }));

/** Seconds from the start of a point to the start of the next, by strokes and the pause that follows. */
const pointSeconds = (random: Random, strokes: number, pause: string | null): number => {
  const rest = pause === "rest" ? 85 : pause === "set" ? 115 : 17 + random.bell() * 4;
  return 3 + strokes * 1.4 + Math.max(8, rest);
};

/**
 * A whole match as one lane's entries, n = 1, 2, 3 …, without the opening: every point charted at
 * "every ball". The same stream and setting give the same match. Ends when the format does.
 */
export const playMatch = (random: Random, setting: DemoMatchSetting): Entry[] => {
  const started = startScore({ format: setting.format, firstServer: setting.firstServer });
  if (!started.ok) return [];
  let board = started.value;
  let endOfA: EndSeen = random.chance(0.5) ? "near" : "far";
  let atMs = 0;
  const players = rallyPlayers(setting.sides);
  const answers = random.fork("what the chartist answers");
  const asked = byPlayer((each) => setting.sides[each].own);
  const entries: Entry[] = [];
  while (!board.state.over && entries.length < MAX_POINTS) {
    const { server, side, changesOfEnds } = board.state;
    if (!server) break;
    const point = playPoint(random, { server, fromRight: side !== "ad", endOfA, players, asked, answers });
    const applied = applyScore(board, { type: "point", winner: point.winner });
    if (!applied.ok) break;
    board = applied.value;
    if ((board.state.changesOfEnds - changesOfEnds) % 2 !== 0) endOfA = turnEnds(endOfA);
    const body: PointCharted = { kind: "PointCharted", point };
    entries.push({
      v: 1,
      id: random.uuid(),
      n: entries.length + 1,
      atMs,
      wallMs: setting.startMs + atMs,
      body,
    });
    atMs += Math.round(pointSeconds(random, 1 + point.shots.length, board.state.pause) * 1000);
  }
  return entries;
};
