import { createMemoryPlans } from "../testing/memory-plans.ts";
import { describePlanStore } from "../testing/plan-store-contract.ts";

describePlanStore("plans in memory", async () => {
  const own = ["player-a", "player-b"] as const;
  const { store } = createMemoryPlans({
    isOwnPlayer: (academyId, playerId) => academyId === "curlew" && own.some((id) => id === playerId),
    nameOf: (memberId) => (memberId === "maren" ? "Maren H." : null),
    wrote: () => undefined,
  });
  return {
    store,
    academyId: "curlew",
    otherId: "heron",
    playerIds: own,
    visitorId: "visitor",
    memberId: "maren",
    memberName: "Maren H.",
    close: async () => undefined,
  };
});
