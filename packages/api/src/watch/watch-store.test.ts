import { createMemoryWatches } from "../testing/memory-watches.ts";
import { describeWatchStore } from "../testing/watch-store-contract.ts";

describeWatchStore("watch settings in memory", async () => {
  const own = ["player-a", "player-b"] as const;
  return {
    store: createMemoryWatches({
      isOwnPlayer: (academyId, playerId) => academyId === "curlew" && own.some((id) => id === playerId),
      nameOf: (memberId) => (memberId === "maren" ? "Maren H." : null),
      wrote: () => undefined,
      judged: () => [],
    }),
    academyId: "curlew",
    otherId: "heron",
    playerIds: own,
    visitorId: "visitor",
    memberId: "maren",
    memberName: "Maren H.",
    close: async () => undefined,
  };
});
