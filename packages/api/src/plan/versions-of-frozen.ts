import type { FrozenPlan } from "@courtloom/match-log";
import type { PlanVersionRow } from "./plan-store.ts";

/**
 * Which versions of the academy's and of the player's plan a match froze, to find their words. A player's plan
 * counts with the academy's: version n of it is the nth change of either. Both undefined for a plan that is no
 * longer kept.
 */
export const versionsOfFrozen = (
  { planId, version }: FrozenPlan,
  academys: readonly PlanVersionRow[],
  players: readonly PlanVersionRow[],
): { readonly academy: PlanVersionRow | undefined; readonly player: PlanVersionRow | undefined } => {
  const academyAt = (n: number) => academys.find((row) => row.version === n);
  if (players[0]?.planId !== planId) {
    const academy = academyAt(version);
    return { academy: academy?.planId === planId ? academy : undefined, player: undefined };
  }
  // The newest first: the first that was there by then.
  const player = players.find((row) => row.onVersion + row.version <= version);
  return { academy: player && academyAt(version - player.version), player };
};
