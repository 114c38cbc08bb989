import type { Clock } from "@courtloom/core";
import type { BetterAuthOptions, DBAdapter } from "better-auth";
import { drizzleAdapter } from "better-auth/adapters/drizzle";
import { memoryAdapter } from "better-auth/adapters/memory";
import { betterAuth } from "better-auth/minimal";
import type { AccountsDatabase } from "./accounts-database.ts";
import { LONGEST_PASSWORD, SHORTEST_PASSWORD } from "./check-password.ts";
import { hashSessionTokens } from "./hash-session-tokens.ts";
import { hashPassword, verifyPassword } from "./password-hash.ts";
import { sessionCookiePlugin } from "./session-cookie-plugin.ts";
import { IDLE_MS } from "./session-life.ts";
import { withoutParameters } from "./without-parameters.ts";

interface LibraryOptions {
  readonly accounts: AccountsDatabase;
  readonly secret: string;
  readonly secureCookies: boolean;
  readonly baseUrl?: string | undefined;
  readonly clock: Clock;
}

const adapterOf = (accounts: AccountsDatabase): ((options: BetterAuthOptions) => DBAdapter) =>
  accounts.kind === "memory"
    ? memoryAdapter(accounts.tables)
    : drizzleAdapter(accounts.db as Record<string, unknown>, {
        provider: "pg",
        schema: { ...accounts.schema },
        transaction: true,
      });

/** Sessions live by this product's clock, and keep neither an address nor a device's description. */
const sessionHooks = (clock: Clock): BetterAuthOptions["databaseHooks"] => ({
  session: {
    create: {
      before: async (session) => {
        const nowMs = clock.wallMs();
        const now = new Date(nowMs);
        return {
          data: {
            ...session,
            createdAt: now,
            updatedAt: now,
            expiresAt: new Date(nowMs + IDLE_MS),
            ipAddress: "",
            userAgent: "",
          },
        };
      },
    },
  },
});

/**
 * The account library, set up for this product. Only its calls inside the process are used: its own web
 * routes stay shut, so what it would offer there (sign-up, reset, sessions of others) cannot be reached.
 */
export const createAccountLibrary = (options: LibraryOptions) => {
  const database = adapterOf(options.accounts);
  return betterAuth({
    appName: "courtloom",
    baseURL: options.baseUrl ?? "http://localhost",
    secret: options.secret,
    database: (libraryOptions: BetterAuthOptions) =>
      withoutParameters(hashSessionTokens(database(libraryOptions))),
    databaseHooks: sessionHooks(options.clock),
    emailAndPassword: {
      enabled: true,
      disableSignUp: true,
      minPasswordLength: SHORTEST_PASSWORD,
      maxPasswordLength: LONGEST_PASSWORD,
      password: { hash: hashPassword, verify: verifyPassword },
    },
    session: { expiresIn: IDLE_MS / 1000, disableSessionRefresh: true, cookieCache: { enabled: false } },
    rateLimit: { enabled: false },
    advanced: {
      useSecureCookies: false,
      disableCSRFCheck: false,
      ipAddress: { disableIpTracking: true },
      cookies: {
        session_token: {
          name: options.secureCookies ? "__Host-courtloom_account" : "courtloom_account",
          attributes: { secure: options.secureCookies, httpOnly: true, sameSite: "lax", path: "/" },
        },
      },
      database: { generateId: () => crypto.randomUUID() },
    },
    telemetry: { enabled: false },
    logger: { level: "error" },
    plugins: [sessionCookiePlugin],
  });
};

export type AccountLibrary = ReturnType<typeof createAccountLibrary>;
