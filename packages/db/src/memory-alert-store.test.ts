import { alertStoreContract } from "./alert-store.contract.ts";
import { createMemoryAlertStore } from "./memory-alert-store.ts";

alertStoreContract("in memory", async () => {
  const store = createMemoryAlertStore();
  return {
    store,
    addMatch: async (match) => {
      const dayId = `day of ${match.matchId}`;
      store.addMatch({ ...match, dayId });
      return dayId;
    },
    close: async () => undefined,
  };
});
