import { isDeepStrictEqual } from "node:util";
import { err, ok } from "@courtloom/core";
import type { JudgedAlerts, WatchSettingRow, WatchStore } from "../watch/watch-store.ts";

type Kept = WatchSettingRow & { readonly academyId: string };

const bare = ({ academyId: _, ...row }: Kept): WatchSettingRow => row;

/** The academy's settings come first. */
const byPlayer = (a: Kept, b: Kept): number => {
  const [left, right] = [a.playerId ?? "", b.playerId ?? ""];
  return left < right ? -1 : Number(left > right);
};

interface Surroundings {
  readonly isOwnPlayer: (academyId: string, playerId: string) => boolean;
  readonly nameOf: (memberId: string) => string | null;
  readonly wrote: () => void;
  /** What staff said of alerts. */
  readonly judged: (academyId: string) => readonly JudgedAlerts[];
}

/** Watch settings in memory, by the rules of the ones on disk. */
export const createMemoryWatches = ({ isOwnPlayer, nameOf, wrote, judged }: Surroundings): WatchStore => {
  const rows: Kept[] = [];
  const newestOf = (academyId: string, playerId: string | null): Kept | undefined =>
    rows.findLast((row) => row.academyId === academyId && row.playerId === playerId);
  return {
    watchSettings: async ({ academyId, playerIds }) =>
      rows
        .filter((row) => row.academyId === academyId)
        .filter(({ playerId }) => playerId === null || (playerIds?.includes(playerId) ?? true))
        .filter((row) => newestOf(academyId, row.playerId) === row)
        .sort(byPlayer)
        .map(bare),
    saveWatchSetting: async ({ academyId, playerId, expected, choice, savedBy }) => {
      if (playerId !== null && !isOwnPlayer(academyId, playerId)) return err({ code: "unknown_player" });
      const newest = newestOf(academyId, playerId);
      const version = newest?.version ?? 0;
      const isNext = version === expected + 1 && newest?.savedBy === savedBy;
      if (newest && isNext && isDeepStrictEqual(newest.choice, choice)) return ok(bare(newest));
      if (version !== expected) return err({ code: "stale_watch", version });
      const added: Kept = {
        academyId,
        playerId,
        version: version + 1,
        choice: structuredClone(choice),
        savedBy,
        savedByName: nameOf(savedBy),
        savedMs: 1_780_000_000_000 + rows.length,
      };
      rows.push(added);
      wrote();
      return ok(bare(added));
    },
    judgedAlerts: async ({ academyId }) => judged(academyId),
  };
};
