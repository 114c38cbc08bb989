import { entryStoreContract } from "./entry-store.contract.ts";
import { createMemoryEntryStore } from "./memory-entry-store.ts";

entryStoreContract("in memory", async () => {
  let ids = 0;
  const newId = (): string => {
    ids += 1;
    return `desk-made-${ids}`;
  };
  const store = createMemoryEntryStore({ incarnation: "one", newId, wallMs: () => 1_780_000_000_000 });
  return {
    store,
    addMatch: async (match) => store.addMatch({ ...match, dayId: null, courtId: null }),
    addHandOver: async (handed) => store.addHandOver(handed),
    close: async () => undefined,
  };
});
