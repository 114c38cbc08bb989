import type { LeadHarness } from "./contract-harness.ts";
import type { MemoryAuthStore } from "./memory-auth-store.ts";

/** Matches that are charted, for the store in memory. */
export const memoryLeads = (store: Pick<MemoryAuthStore, "setLead">): LeadHarness => {
  let serial = 0;
  const next = (word: string): string => {
    serial += 1;
    return `${word}-${serial}`;
  };
  return {
    openMatch: async ({ academyId }, owner) => {
      const lead = { academyId, matchId: next("match"), laneId: next("lane") };
      store.setLead({ ...lead, owner, chartist: "Dana H." });
      return lead;
    },
    takeOver: async (lead, owner) => {
      const laneId = next("lane");
      store.setLead({ ...lead, laneId, owner, chartist: "Rosa T." });
      return laneId;
    },
  };
};
