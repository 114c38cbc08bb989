import { describeAuthStore } from "./testing/auth-store-contract.ts";
import type { ContractAcademy } from "./testing/contract-harness.ts";
import { createMemoryAuthStore } from "./testing/memory-auth-store.ts";
import { memoryLeads } from "./testing/memory-leads.ts";

describeAuthStore("store in memory", async () => {
  const store = createMemoryAuthStore();
  let serial = 0;
  const make = (): ContractAcademy => {
    serial += 1;
    const id = (word: string): string => `${word}-${serial}`;
    return {
      academyId: id("academy"),
      memberId: id("member"),
      userId: id("user"),
      dayId: id("day"),
      courtId: id("court"),
    };
  };
  return {
    store,
    ...memoryLeads(store),
    makeAcademy: async (isDemo) => {
      const academy = make();
      store.addMember({ ...academy, isDemo, name: "Ada Finch", role: "director" });
      return academy;
    },
    makeOther: async () => make(),
    close: async () => undefined,
  };
});
