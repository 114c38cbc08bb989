import type { FlowHarness } from "./testing/auth-flows.ts";
import { describeAuthFlows } from "./testing/auth-flows.ts";
import { describeCourtsideFlows } from "./testing/courtside-flows.ts";
import { describeHandOverFlows } from "./testing/hand-over-flows.ts";
import { createMemoryAuthStore } from "./testing/memory-auth-store.ts";
import { memoryLeads } from "./testing/memory-leads.ts";

const open = async () => {
  const store = createMemoryAuthStore();
  const tables = { user: [], session: [], account: [], verification: [] };
  const harness: FlowHarness = {
    accounts: { kind: "memory", tables },
    store,
    appoint: async (userId, isDemo) =>
      store.addMember({
        userId,
        isDemo,
        academyId: isDemo ? "demo" : "academy",
        memberId: `member of ${userId}`,
        name: "Ada Finch",
        role: "director",
      }),
    everything: async () => JSON.stringify([tables, store.everything()]),
    close: async () => undefined,
  };
  return { ...harness, ...memoryLeads(store), addMember: store.addMember };
};

describeAuthFlows("accounts in memory", open);

const openCourtside = async () => {
  let serial = 0;
  const opened = await open();
  const makeAcademy = async (userId?: string) => {
    serial += 1;
    const id = (word: string): string => `${word}-${serial}`;
    const academy = {
      academyId: id("academy"),
      memberId: id("member"),
      userId: userId ?? id("user"),
      dayId: id("day"),
      courtId: id("court"),
    };
    opened.addMember({ ...academy, isDemo: false, name: "Ada Finch", role: "director" });
    return academy;
  };
  return { ...opened, makeAcademy };
};

describeCourtsideFlows("codes in memory", openCourtside);
describeHandOverFlows("hand-overs in memory", openCourtside);
