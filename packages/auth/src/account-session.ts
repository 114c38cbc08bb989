import type { Clock } from "@courtloom/core";
import { isAPIError } from "better-auth/api";
import { parseSetCookieHeader } from "better-auth/cookies";
import type { AccountLibrary } from "./account-library.ts";
import type { SignedIn } from "./auth.ts";
import { ABSOLUTE_MS, isOver, nextExpiry } from "./session-life.ts";
import { makeSetCookie, type SetCookie } from "./set-cookie.ts";

/** A session that may be used. */
export interface LiveSession {
  readonly userId: string;
  readonly email: string;
}

/** What account sessions stand on. */
export interface SessionBase {
  readonly library: AccountLibrary;
  readonly clock: Clock;
  readonly secureCookies: boolean;
}

const sessionCookie = async (base: SessionBase, value: string, maxAge: number): Promise<SetCookie> => {
  const { name } = (await base.library.$context).authCookies.sessionToken;
  return makeSetCookie(name, value, { secure: base.secureCookies, maxAge });
};

/** Takes the session cookie off a browser. */
export const removedCookie = (base: SessionBase): Promise<SetCookie> => sessionCookie(base, "", 0);

/** The library's cookie with this product's life: the server ends an idle session, not the browser. */
const cookieFrom = async (base: SessionBase, headers: Headers): Promise<SetCookie> => {
  const { name } = (await base.library.$context).authCookies.sessionToken;
  const set = headers
    .getSetCookie()
    .map((header) => parseSetCookieHeader(header).get(name)?.value)
    .find((value) => value !== undefined && value !== "");
  if (set === undefined) throw new Error("bug: the account library set no session cookie");
  return sessionCookie(base, set, ABSOLUTE_MS / 1000);
};

const tokenOf = async (base: SessionBase, cookieHeader: string | undefined): Promise<string | undefined> => {
  if (!cookieHeader) return undefined;
  const headers = new Headers({ cookie: cookieHeader });
  return (await base.library.api.readSessionToken({ headers })).token ?? undefined;
};

/** The session of a cookie header, noting its use; undefined when there is none or it is over. */
export const findSession = async (
  base: SessionBase,
  cookieHeader: string | undefined,
): Promise<LiveSession | undefined> => {
  const token = await tokenOf(base, cookieHeader);
  if (token === undefined) return undefined;
  const { internalAdapter } = await base.library.$context;
  const found = await internalAdapter.findSession(token);
  if (!found) return undefined;
  const nowMs = base.clock.wallMs();
  if (isOver(found.session, nowMs)) {
    await internalAdapter.deleteSession(token);
    return undefined;
  }
  const expiresAt = nextExpiry(found.session, nowMs);
  if (expiresAt) await internalAdapter.updateSession(token, { expiresAt });
  return { userId: found.user.id, email: found.user.email };
};

/** Ends the session of a cookie header, if it holds one. */
export const endSession = async (base: SessionBase, cookieHeader: string | undefined): Promise<void> => {
  const token = await tokenOf(base, cookieHeader);
  if (token !== undefined) await (await base.library.$context).internalAdapter.deleteSession(token);
};

/** Ends every session of a user. */
export const endSessionsOf = async (base: SessionBase, userId: string): Promise<void> =>
  (await base.library.$context).internalAdapter.deleteUserSessions(userId);

const clearOver = async (base: SessionBase, userId: string): Promise<void> => {
  const { adapter } = await base.library.$context;
  const now = new Date(base.clock.wallMs());
  await adapter.deleteMany({
    model: "session",
    where: [
      { field: "userId", value: userId },
      { field: "expiresAt", operator: "lte", value: now },
    ],
  });
};

/** What follows every way in: the session that the device had and the user's dead ones go. */
const begin = async (
  base: SessionBase,
  userId: string,
  headers: Headers,
  before: string | undefined,
): Promise<SignedIn> => {
  await endSession(base, before);
  await clearOver(base, userId);
  return { userId, setCookie: await cookieFrom(base, headers) };
};

const isWrong = (error: unknown): boolean =>
  isAPIError(error) && (error.status === "UNAUTHORIZED" || error.status === "BAD_REQUEST");

/**
 * A session for who knows the password; undefined when the e-mail or the password is wrong (which of them is
 * told to nobody). `before` is the cookie header that the device came with.
 */
export const beginWithPassword = async (
  base: SessionBase,
  { email, password }: { readonly email: string; readonly password: string },
  before: string | undefined,
): Promise<SignedIn | undefined> => {
  try {
    const { headers, response } = await base.library.api.signInEmail({
      body: { email: email.trim().toLowerCase(), password },
      returnHeaders: true,
    });
    return await begin(base, response.user.id, headers, before);
  } catch (error) {
    if (isWrong(error)) return undefined;
    throw error;
  }
};

/** A session without a password; undefined when there is no such user. */
export const beginAs = async (
  base: SessionBase,
  userId: string,
  before: string | undefined,
): Promise<SignedIn | undefined> => {
  const { headers, response } = await base.library.api.openSession({ body: { userId }, returnHeaders: true });
  return response.token === null ? undefined : begin(base, userId, headers, before);
};
