import type { LoggedEntry } from "@courtloom/match-log";
import type { Surface } from "@courtloom/tennis";
import type { MatchRow } from "../api-store.ts";
import type { ChoiceFitRow, FigureStore } from "../figures/figure-store.ts";

interface Tallied {
  readonly academyId: string;
  readonly playerId: string;
  readonly matchId: string;
}

type PlayedMatch = MatchRow & { readonly surface?: Surface | null };

interface Surroundings {
  readonly tallied: () => readonly Tallied[];
  readonly matchOf: (academyId: string, matchId: string) => PlayedMatch | undefined;
  readonly logOf: (matchId: string) => readonly LoggedEntry[];
  readonly lanesOf: (matchId: string) => readonly { readonly laneId: string; readonly chartist: string }[];
}

const latestFirst = (a: PlayedMatch, b: PlayedMatch): number =>
  [a.playedOn, a.matchId].join() < [b.playedOn, b.matchId].join() ? 1 : -1;

/** Charted matches, their logs and an academy's fits in memory, by the rules of those on disk. */
export const createMemoryFigures = ({ tallied, matchOf, logOf, lanesOf }: Surroundings) => {
  const fits: (ChoiceFitRow & { readonly academyId: string })[] = [];
  const addChoiceFit = async ({ academyId, fit }: { readonly academyId: string; readonly fit: unknown }) => {
    const version = fits.filter((row) => row.academyId === academyId).length + 1;
    fits.push({ academyId, version, fittedMs: 1_780_000_000_000 + version, fit: structuredClone(fit) });
    return { version };
  };
  const store: FigureStore = {
    chartedMatches: async ({ academyId, playerId, limit }) =>
      tallied()
        .filter((row) => row.academyId === academyId && row.playerId === playerId)
        .flatMap(({ matchId }) => matchOf(academyId, matchId) ?? [])
        .sort(latestFirst)
        .slice(0, limit)
        .map(({ matchId, title, playedOn, players, partners, format, surface }) => {
          const isA = [players.A, partners.A].some((player) => player?.playerId === playerId);
          const { playerId: opponentId, displayName } = isA ? players.B : players.A;
          const opponent = { playerId: opponentId, displayName };
          const head = logOf(matchId).length;
          return {
            matchId,
            title,
            playedOn,
            side: isA ? "A" : "B",
            opponent,
            format,
            surface: surface ?? null,
            head,
          };
        }),
    matchLogs: async ({ academyId, matchIds }) =>
      matchIds
        .filter((matchId) => matchOf(academyId, matchId) && logOf(matchId).length > 0)
        .map((matchId) => ({ matchId, entries: logOf(matchId), lanes: lanesOf(matchId) })),
    choiceFit: async ({ academyId, version }) => {
      const row = fits.findLast(
        (each) => each.academyId === academyId && (version === undefined || each.version === version),
      );
      return row && { version: row.version, fittedMs: row.fittedMs, fit: row.fit };
    },
  };
  return { store, addChoiceFit };
};
