import type { FigureStore } from "./figure-store.ts";
import { type FoldedMatch, foldMatch } from "./folded-match.ts";

/** Points of the matches that are kept: about fifty megabytes. */
const MOST_POINTS = 30_000;
/** Matches read and folded in one go: other requests come between. */
const BATCH = 20;

interface Wanted {
  readonly matchId: string;
  readonly head: number;
}

/**
 * Matches folded for figures over many of them, kept by (academy, match, position of the log's head).
 *
 * The stored logs are folded again, rather than tallies kept finer: every figure has to open its points, which only
 * the log holds; a filter by chartist or level is then the same count over fewer points, so that filtered figures add
 * up by construction; and a correction or a new figure needs no rewriting. A season is a few hundred milliseconds the
 * first time, and afterwards a look into this cache.
 */
export interface HistoryCache {
  readonly folded: (
    store: Pick<FigureStore, "matchLogs">,
    academyId: string,
    wanted: readonly Wanted[],
  ) => Promise<ReadonlyMap<string, FoldedMatch>>;
}

export const createHistoryCache = (): HistoryCache => {
  /** In the order of their last use. */
  const kept = new Map<string, FoldedMatch>();
  let points = 0;
  const drop = (key: string): void => {
    points -= kept.get(key)?.view.points.length ?? 0;
    kept.delete(key);
  };
  const keep = (key: string, match: FoldedMatch): void => {
    drop(key);
    kept.set(key, match);
    points += match.view.points.length;
    for (const oldest of kept.keys()) {
      if (points <= MOST_POINTS || oldest === key) break;
      drop(oldest);
    }
  };
  return {
    folded: async (store, academyId, wanted) => {
      const keyOf = (matchId: string): string => `${academyId}/${matchId}`;
      const found = new Map<string, FoldedMatch>();
      for (const { matchId, head } of wanted) {
        const match = kept.get(keyOf(matchId));
        if (match && match.head >= head) found.set(matchId, match);
      }
      const missing = wanted.map(({ matchId }) => matchId).filter((matchId) => !found.has(matchId));
      for (let at = 0; at < missing.length; at += BATCH) {
        const matchIds = missing.slice(at, at + BATCH);
        for (const log of await store.matchLogs({ academyId, matchIds })) {
          const match = foldMatch(log);
          if (match) found.set(log.matchId, match);
        }
      }
      for (const [matchId, match] of found) keep(keyOf(matchId), match);
      return found;
    },
  };
};
