import { planForPlayer } from "@courtloom/decisions";
import type { FrozenPlan } from "@courtloom/match-log";
import type { StaffContext } from "../procedure.ts";

/** A player's plan as it holds today; null where there is none. */
export const readPlanNow = async (
  { store, staff }: StaffContext,
  playerId: string,
): Promise<FrozenPlan | null> => {
  const plans = await store.plans({ academyId: staff.academyId, playerIds: [playerId] });
  const of = (whose: string | null) => plans.find((plan) => plan.playerId === whose);
  return planForPlayer(of(null), of(playerId))?.frozen ?? null;
};
