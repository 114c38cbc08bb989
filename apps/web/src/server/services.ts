import "server-only";
import { createHistoryCache } from "@courtloom/api";
import { createAuth } from "@courtloom/auth";
import type { Clock } from "@courtloom/core";
import {
  createAuthStore,
  createDayStore,
  createPostgresEntryStore,
  openAccounts,
  openDb,
} from "@courtloom/db";
import { readWebEnv } from "../env.ts";
import { addressOf } from "./address-of.ts";
import { log } from "./log.ts";
import { once } from "./once.ts";

const clock: Clock = { wallMs: () => Date.now(), monotonicMs: () => performance.now() };

const open = () => {
  const env = readWebEnv();
  const db = openDb(env.appDatabaseUrl);
  const auth = createAuth({
    accounts: openAccounts(env.authDatabaseUrl),
    store: createAuthStore(db),
    secret: env.secret,
    secureCookies: env.publicUrl.startsWith("https:"),
    addressOf,
    clock,
  });
  const days = createDayStore(db);
  const entries = createPostgresEntryStore(db, { log: (line) => log.info(line) });
  return { env, auth, days, entries, history: createHistoryCache(), clock };
};

export type Services = ReturnType<typeof open>;

/** Stores and accounts of this process, opened by the first request that needs them: a build needs no database. */
export const services = (): Services => once("services", open);
