import { randomUUID } from "node:crypto";
import { readFileSync } from "node:fs";
import type { LoggedEntry, MatchOpened } from "@courtloom/match-log";
import type { Surface } from "@courtloom/tennis";
import type { TestApi } from "./make-api.ts";

interface Golden {
  readonly log: readonly LoggedEntry[];
  /** As tallied by hand of side A. */
  readonly tally: unknown;
}

/** Sixty points as they were stored, with what the hand found. */
export const SIXTY_POINTS: Golden = JSON.parse(
  readFileSync(new URL("../../../../shared/matches/sixty-points.json", import.meta.url), "utf8"),
);

export interface PastMatch {
  readonly playedOn: string;
  /** Levels of the player and of the opponent, when it was opened. */
  readonly levels?: readonly [own: number, opponent: number];
  readonly surface?: Surface;
  readonly chartist?: string;
  /** Points charted of the sixty; all unless told. */
  readonly points?: number;
  readonly opened?: Partial<MatchOpened>;
}

/** The sixty points with ids of their own, as if charted of these two players. */
const logFor = (match: PastMatch, matchId: string, playerIds: { readonly A: string; readonly B: string }) =>
  SIXTY_POINTS.log.slice(0, 1 + (match.points ?? 60)).map((logged): LoggedEntry => {
    const { entry } = logged;
    if (entry.body.kind !== "MatchOpened") return { ...logged, entry: { ...entry, id: randomUUID() } };
    const [a, b] = match.levels ?? [];
    const { players } = entry.body;
    const body = {
      ...entry.body,
      ...match.opened,
      matchId,
      players: {
        A: { ...players.A, playerId: playerIds.A, ...(a === undefined ? {} : { level: a }) },
        B: { ...players.B, playerId: playerIds.B, ...(b === undefined ? {} : { level: b }) },
      },
    };
    return { ...logged, entry: { ...entry, id: randomUUID(), body } };
  });

/** Puts past matches of the match's player A beside the one that `seedDay` made; answers their ids, in the order given. */
export const seedHistory = (
  api: TestApi,
  academyId: string,
  likeMatchId: string,
  matches: readonly PastMatch[],
): readonly string[] => {
  const like = api.memory.rows.matches.find(({ matchId }) => matchId === likeMatchId);
  if (!like) throw new Error("seed the day first");
  const { A, B } = like.players;
  return matches.map((match) => {
    const matchId = randomUUID();
    const { surface, playedOn, chartist = "Dana H." } = match;
    api.memory.rows.matches.push({
      ...like,
      ...{ matchId, playedOn, stage: "over", ...(surface ? { surface } : {}) },
    });
    api.memory.logs.openFromPhone(matchId, "lane-1", chartist);
    api.memory.logs.put(matchId, logFor(match, matchId, { A: A.playerId, B: B.playerId }));
    api.memory.rows.tallies.push({ academyId, playerId: A.playerId, matchId, tally: SIXTY_POINTS.tally });
    return matchId;
  });
};
