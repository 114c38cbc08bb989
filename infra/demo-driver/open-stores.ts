import { createAuth } from "@courtloom/auth";
import type { Clock } from "@courtloom/core";
import { createAuthStore, createDayStore, openAccounts, openDb } from "@courtloom/db";
import type { DemoEnv } from "./env.ts";

export const systemClock: Clock = { wallMs: () => Date.now(), monotonicMs: () => performance.now() };

type StoresOptions = Pick<DemoEnv, "appUrl" | "authUrl" | "secret"> & Partial<Pick<DemoEnv, "secureCookies">>;

/** The stores and accounts that the demo works through, with the application's rights. Close it in the end. */
export const openStores = ({ appUrl, authUrl, secret, secureCookies = false }: StoresOptions) => {
  const db = openDb(appUrl, { poolSize: 3 });
  const accounts = openAccounts(authUrl);
  const auth = createAuth({
    accounts,
    store: createAuthStore(db),
    secret,
    secureCookies,
    clock: systemClock,
  });
  return {
    auth,
    days: createDayStore(db),
    close: async () => {
      await accounts.close();
      await db.close();
    },
  };
};

export type Stores = ReturnType<typeof openStores>;
