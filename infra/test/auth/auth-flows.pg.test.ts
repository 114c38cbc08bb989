import { describeAuthFlows } from "../../../packages/auth/src/testing/auth-flows.ts";
import { describeCourtsideFlows } from "../../../packages/auth/src/testing/courtside-flows.ts";
import { describeHandOverFlows } from "../../../packages/auth/src/testing/hand-over-flows.ts";
import { openAuthDatabase } from "./open-auth-database.ts";

const open = async () => {
  const { makeAcademy, ...database } = await openAuthDatabase();
  const appoint = async (userId: string, isDemo: boolean): Promise<void> => {
    await makeAcademy(isDemo, userId);
  };
  return { ...database, appoint, makeAcademy: (userId?: string) => makeAcademy(false, userId) };
};

describeAuthFlows("accounts in Postgres", open);
describeCourtsideFlows("codes in Postgres", open);
describeHandOverFlows("hand-overs in Postgres", open);
