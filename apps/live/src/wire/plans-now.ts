import { type ByPlayer, byPlayer } from "@courtloom/core";
import type { DayStore } from "@courtloom/db";
import { planForPlayer } from "@courtloom/decisions";
import type { FrozenPlan } from "@courtloom/match-log";
import type { MatchCard } from "../store.ts";

/** The plan that holds this moment for each own player of a match; null for a visitor and where there is none. SPEC PL20. */
export const plansNow = async (
  days: Pick<DayStore, "plans">,
  { academyId, players }: Pick<MatchCard, "academyId" | "players">,
): Promise<ByPlayer<FrozenPlan | null>> => {
  const own = [players.A, players.B].filter((player) => player.own).map(({ playerId }) => playerId);
  const plans = await days.plans({ academyId, playerIds: own });
  const planOf = (playerId: string | null) => plans.find((plan) => plan.playerId === playerId);
  return byPlayer((side) => {
    const { playerId, own: isOwn } = players[side];
    return isOwn ? (planForPlayer(planOf(null), planOf(playerId))?.frozen ?? null) : null;
  });
};
