import { figuresOf, freezeOpening } from "@courtloom/decisions";
import { createRandom, DEMO_CHARTISTS, type DemoMatch, playSeasons } from "@courtloom/demo";
import { DESK_LANE, foldLog, type LoggedEntry } from "@courtloom/match-log";
import type { Comparison } from "./compare.ts";

const MATCHES = 24;

const logOf = (match: DemoMatch): LoggedEntry[] => {
  const player = (playerId: string) => ({ playerId, hand: "right", own: true }) as const;
  const body = freezeOpening({
    matchId: match.matchId,
    format: match.format,
    firstServer: match.firstServer,
    players: { A: player(match.playerIds.A), B: player(match.playerIds.B) },
    doubles: false,
    coachingMode: "practice",
    past: { own: { A: [], B: [] }, academy: [] },
  });
  return [
    {
      pos: 1,
      laneId: DESK_LANE,
      epoch: 0,
      entry: { v: 1, id: match.matchId, n: 1, atMs: 0, wallMs: 0, body },
    },
    ...match.entries.map((entry, i) => ({ pos: i + 2, laneId: match.laneId, epoch: 1, entry })),
  ];
};

/** Score and figures of whole logs, every ball charted, against reading the same logs' text. */
export const foldAgainstParse = (): Comparison => {
  const logs = playSeasons(createRandom(1), 1_790_000_000_000, DEMO_CHARTISTS).slice(0, MATCHES).map(logOf);
  const texts = logs.map((log) => JSON.stringify(log));
  return {
    name: `fold of ${MATCHES} logs, score and figures`,
    floorName: "JSON.parse of the same logs",
    bar: 3,
    floor: () => {
      for (const text of texts) JSON.parse(text);
    },
    ours: () => {
      for (const log of logs) {
        const view = foldLog(log);
        if (!view.ok) throw new Error(view.error);
        figuresOf(view.value);
      }
    },
  };
};
