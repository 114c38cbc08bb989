import type { FlowHarness } from "./testing/auth-flows.ts";
import { describeAuthFlows } from "./testing/auth-flows.ts";
import { describeCourtsideFlows } from "./testing/courtside-flows.ts";
import { createMemoryAuthStore } from "./testing/memory-auth-store.ts";

const open = async (): Promise<FlowHarness> => {
  const store = createMemoryAuthStore();
  const tables = { user: [], session: [], account: [], verification: [] };
  return {
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
};

describeAuthFlows("accounts in memory", open);

describeCourtsideFlows("codes in memory", async () => {
  let serial = 0;
  const makeAcademy = async () => {
    serial += 1;
    const id = (word: string): string => `${word}-${serial}`;
    return { academyId: id("academy"), memberId: id("member"), dayId: id("day"), courtId: id("court") };
  };
  return { ...(await open()), makeAcademy };
});
