import { randomUUID } from "node:crypto";
import { isDeepStrictEqual } from "node:util";
import { err, ok } from "@courtloom/core";
import type { PlanStore, PlanVersionRow } from "../plan/plan-store.ts";

type Kept = PlanVersionRow & { readonly academyId: string };

const bare = ({ academyId: _, ...row }: Kept): PlanVersionRow => row;

/** The academy's plan comes first. */
const byPlayer = (a: Kept, b: Kept): number => {
  const [left, right] = [a.playerId ?? "", b.playerId ?? ""];
  return left < right ? -1 : Number(left > right);
};

interface Surroundings {
  readonly isOwnPlayer: (academyId: string, playerId: string) => boolean;
  readonly nameOf: (memberId: string) => string | null;
  readonly wrote: () => void;
}

/** Plans in memory, by the rules of the one on disk. */
export const createMemoryPlans = ({ isOwnPlayer, nameOf, wrote }: Surroundings) => {
  const rows: Kept[] = [];
  const versionsOf = (academyId: string, playerId: string | null): Kept[] =>
    rows
      .filter((row) => row.academyId === academyId && row.playerId === playerId)
      .sort((a, b) => b.version - a.version);
  const store: PlanStore = {
    plans: async ({ academyId, playerIds }) =>
      rows
        .filter((row) => row.academyId === academyId)
        .filter(({ playerId }) => playerId === null || (playerIds?.includes(playerId) ?? true))
        .filter((row) => versionsOf(academyId, row.playerId)[0] === row)
        .sort(byPlayer)
        .map(bare),
    planVersions: async ({ academyId, playerId }) => versionsOf(academyId, playerId).map(bare),
    savePlan: async ({ academyId, playerId, expected, content, note, savedBy }) => {
      if (playerId !== null && !isOwnPlayer(academyId, playerId)) return err({ code: "unknown_player" });
      const newest = versionsOf(academyId, playerId)[0];
      const version = newest?.version ?? 0;
      if (newest && version === expected + 1 && newest.savedBy === savedBy && newest.note === note) {
        const { words, rules, replaces, leavesOut, ruleWords, sentence, question } = newest;
        const had = { words, rules, replaces, leavesOut, ruleWords, sentence, question };
        if (isDeepStrictEqual(had, content)) return ok(bare(newest));
      }
      if (version !== expected) return err({ code: "stale_plan", version });
      const added: Kept = {
        ...structuredClone(content),
        academyId,
        planId: newest?.planId ?? randomUUID(),
        playerId,
        version: version + 1,
        onVersion: playerId === null ? 0 : (versionsOf(academyId, null)[0]?.version ?? 0),
        note,
        savedBy,
        savedByName: nameOf(savedBy),
        savedMs: 1_780_000_000_000 + rows.length,
      };
      rows.push(added);
      wrote();
      return ok(bare(added));
    },
  };
  return { store, rows };
};
