import type { BetterAuthPlugin } from "better-auth";
import { createAuthEndpoint } from "better-auth/api";
import { setSessionCookie } from "better-auth/cookies";

interface OpenSession {
  readonly userId: string;
}

/** The least that the library needs to check a body. */
const openSessionBody = {
  "~standard": {
    version: 1 as const,
    vendor: "courtloom",
    validate: (raw: unknown) => {
      const userId = typeof raw === "object" && raw !== null && "userId" in raw ? raw.userId : undefined;
      return typeof userId === "string"
        ? { value: { userId } satisfies OpenSession }
        : { issues: [{ message: "A user id is needed." }] };
    },
    types: undefined as { input: OpenSession; output: OpenSession } | undefined,
  },
};

/**
 * Two calls that the account library lacks, reachable from inside the process only: reading the signed
 * session cookie, and opening a session without a password (for who was let in by other means).
 */
export const sessionCookiePlugin = {
  id: "courtloom-session-cookie",
  endpoints: {
    /** The token of a cookie whose signature holds; null otherwise. */
    readSessionToken: createAuthEndpoint.serverOnly({ method: "GET", requireHeaders: true }, async (ctx) => {
      const token = await ctx.getSignedCookie(ctx.context.authCookies.sessionToken.name, ctx.context.secret);
      return { token: typeof token === "string" ? token : null };
    }),
    /** Opens a session for a user; null when there is no such user. */
    openSession: createAuthEndpoint.serverOnly({ method: "POST", body: openSessionBody }, async (ctx) => {
      const user = await ctx.context.internalAdapter.findUserById(ctx.body.userId);
      if (!user) return { token: null };
      const session = await ctx.context.internalAdapter.createSession(user.id, false);
      await setSessionCookie(ctx, { session, user });
      return { token: session.token };
    }),
  },
} satisfies BetterAuthPlugin;
