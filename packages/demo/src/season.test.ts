import { figuresOf, freezeOpening } from "@courtloom/decisions";
import { foldLog, type LoggedEntry, type MatchView } from "@courtloom/match-log";
import { describe, expect, it } from "vitest";
import { createRandom } from "./random.ts";
import { DEMO_CHARTISTS, DEMO_PLAYERS } from "./roster.ts";
import { type DemoMatch, playSeasons } from "./season.ts";

const SEED = 20261125;
const TODAY = Date.UTC(2026, 10, 25);
const seasons = playSeasons(createRandom(SEED), TODAY, DEMO_CHARTISTS);
const ownIds = new Set(DEMO_PLAYERS.map((p) => p.id));

const logOf = (match: DemoMatch): LoggedEntry[] => {
  const player = (id: string) => ({ playerId: id, hand: "right", own: ownIds.has(id) }) as const;
  const opened = freezeOpening({
    matchId: match.matchId,
    format: match.format,
    firstServer: match.firstServer,
    players: { A: player(match.playerIds.A), B: player(match.playerIds.B) },
    doubles: false,
    coachingMode: "practice",
    past: { own: { A: [], B: [] }, academy: [] },
  });
  const opening = { v: 1, id: "o", n: 1, atMs: 0, wallMs: match.startMs, body: opened } as const;
  return [
    { pos: 1, laneId: "desk", epoch: 0, entry: opening },
    ...match.entries.map((entry, i) => ({ pos: i + 2, laneId: match.laneId, epoch: 1, entry })),
  ];
};

const views: MatchView[] = seasons.map((match) => {
  const view = foldLog(logOf(match));
  if (!view.ok) throw new Error(view.error);
  return view.value;
});
const points = views.flatMap((view) => view.points);

const holdFor = (p: number): number => {
  const q = 1 - p;
  return p ** 4 * (15 - 4 * p - (10 * p * p) / (1 - 2 * p * q));
};

describe("the demo's seasons", () => {
  it("[DM1] the same seed plays the same seasons", () => {
    const again = playSeasons(createRandom(SEED), TODAY, DEMO_CHARTISTS);
    expect(JSON.stringify(again.slice(0, 20))).toBe(JSON.stringify(seasons.slice(0, 20)));
  });

  it("[DM2] every match is played to its end and every entry counts", () => {
    expect(views.every((v) => v.score.over && v.setAside.length === 0)).toBe(true);
    expect(views.length).toBeGreaterThan(200);
    for (const { id } of DEMO_PLAYERS) {
      expect(
        seasons.filter((m) => m.playerIds.A === id || m.playerIds.B === id).length,
      ).toBeGreaterThanOrEqual(10);
    }
  });

  it("[DM3] holds and points per game are what a steady point-win rate implies", () => {
    const p = points.filter((v) => v.point.winner === v.server).length / points.length;
    const games = points.filter((v) => !v.before.tieBreak && v.after.games.join() !== v.before.games.join());
    const holds = games.filter((v) => v.point.winner === v.server).length / games.length;
    expect(p).toBeGreaterThan(0.54);
    expect(p).toBeLessThan(0.64);
    expect(Math.abs(holds - holdFor(p))).toBeLessThan(0.03);
    const inGames = points.filter((v) => !v.before.tieBreak).length;
    expect(inGames / games.length).toBeGreaterThan(6);
    expect(inGames / games.length).toBeLessThan(7.1);
  });

  it("[DM4] 55 to 70 in 100 rallies last one to four shots, the serve counted", () => {
    const short = points.filter((v) => 1 + v.point.shots.length <= 4).length / points.length;
    expect(short).toBeGreaterThanOrEqual(0.55);
    expect(short).toBeLessThanOrEqual(0.7);
  });

  it("[DM5] players differ as their temper says", () => {
    const line = { steady: [0, 0, 0], impatient: [0, 0, 0], brave: [0, 0, 0] };
    const temper = new Map(DEMO_PLAYERS.map((p) => [p.id, p.temper]));
    for (const view of views) {
      const figures = figuresOf(view);
      for (const side of ["A", "B"] as const) {
        const kind = temper.get(view.opened.players[side].playerId);
        const mine = figures[side];
        if (!kind || !mine) continue;
        const sums = line[kind];
        sums[0] = (sums[0] ?? 0) + mine.lineShare.x;
        sums[1] = (sums[1] ?? 0) + mine.lineShare.n;
        sums[2] = (sums[2] ?? 0) + mine.lineMissed.x;
      }
    }
    const share = ([tried = 0, strokes = 1]: number[]) => tried / strokes;
    const missed = ([tried = 1, , x = 0]: number[]) => x / tried;
    expect(share(line.impatient)).toBeGreaterThan(share(line.steady) + 0.08);
    expect(missed(line.impatient)).toBeGreaterThan(missed(line.steady) + 0.06);
    expect(share(line.brave)).toBeGreaterThan(share(line.steady));
  });
});
