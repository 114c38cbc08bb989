import { describeAuthFlows } from "../../../packages/auth/src/testing/auth-flows.ts";
import { describeCourtsideFlows } from "../../../packages/auth/src/testing/courtside-flows.ts";
import { openAuthDatabase } from "./open-auth-database.ts";

const open = async () => {
  const { store, accounts, makeAcademy, everything, close } = await openAuthDatabase();
  const appoint = async (userId: string, isDemo: boolean): Promise<void> => {
    await makeAcademy(isDemo, userId);
  };
  return { store, accounts, appoint, everything, close, makeAcademy: () => makeAcademy(false) };
};

describeAuthFlows("accounts in Postgres", open);
describeCourtsideFlows("codes in Postgres", open);
