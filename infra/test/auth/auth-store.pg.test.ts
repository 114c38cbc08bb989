import { describeAuthStore } from "../../../packages/auth/src/testing/auth-store-contract.ts";
import { openAuthDatabase } from "./open-auth-database.ts";

describeAuthStore("store in Postgres", async () => {
  const { store, makeAcademy, openMatch, takeOver, close } = await openAuthDatabase();
  return { store, makeAcademy, makeOther: () => makeAcademy(false), openMatch, takeOver, close };
});
