import { type Clock, err, ok, type Result } from "@courtloom/core";
import { isAPIError } from "better-auth/api";
import { parseSetCookieHeader } from "better-auth/cookies";
import type { AccountLibrary } from "./account-library.ts";
import type { AccountRefusal, NewAccount, SignedIn } from "./auth.ts";
import { checkPassword } from "./check-password.ts";
import { parseEmail } from "./parse-email.ts";
import { parseName } from "./parse-name.ts";
import { hashPassword } from "./password-hash.ts";
import { ABSOLUTE_MS, isOver, nextExpiry } from "./session-life.ts";
import { makeSetCookie, type SetCookie } from "./set-cookie.ts";

/** A session that may be used, and its clear token. */
export interface LiveSession {
  readonly token: string;
  readonly userId: string;
  readonly email: string;
}

interface Checked {
  readonly email: string;
  readonly name: string;
  readonly password: string | undefined;
}

const checkAccount = ({
  email: rawEmail,
  name: rawName,
  password,
}: NewAccount): Result<Checked, AccountRefusal> => {
  const email = parseEmail(rawEmail);
  if (email === undefined) return err("bad_email");
  const name = parseName(rawName);
  if (name === undefined) return err("bad_name");
  const [localPart = ""] = email.split("@");
  const judged = password === undefined ? ok(undefined) : checkPassword(password, [email, localPart, name]);
  return judged.ok ? ok({ email, name, password }) : judged;
};

/** Accounts, their passwords and sessions; knows no academy. */
export const makeAccounts = (library: AccountLibrary, clock: Clock, secureCookies: boolean) => {
  const context = () => library.$context;

  const sessionCookie = async (value: string, maxAge: number): Promise<SetCookie> =>
    makeSetCookie((await context()).authCookies.sessionToken.name, value, { secure: secureCookies, maxAge });

  /** The library's cookie with this product's life: the server ends an idle session, not the browser. */
  const cookieFrom = async (headers: Headers): Promise<SetCookie> => {
    const { name } = (await context()).authCookies.sessionToken;
    const set = headers
      .getSetCookie()
      .map((header) => parseSetCookieHeader(header).get(name)?.value)
      .find((value) => value !== undefined && value !== "");
    if (set === undefined) throw new Error("bug: the account library set no session cookie");
    return sessionCookie(set, ABSOLUTE_MS / 1000);
  };

  const tokenOf = async (cookieHeader: string | undefined): Promise<string | undefined> => {
    if (!cookieHeader) return undefined;
    const { token } = await library.api.readSessionToken({ headers: new Headers({ cookie: cookieHeader }) });
    return token ?? undefined;
  };

  const clearOver = async (userId: string): Promise<void> => {
    const { adapter } = await context();
    await adapter.deleteMany({
      model: "session",
      where: [
        { field: "userId", value: userId },
        { field: "expiresAt", operator: "lte", value: new Date(clock.wallMs()) },
      ],
    });
  };

  const endToken = async (token: string): Promise<void> =>
    (await context()).internalAdapter.deleteSession(token);

  /** The session of a cookie header, noting its use; undefined when there is none or it is over. */
  const find = async (cookieHeader: string | undefined): Promise<LiveSession | undefined> => {
    const token = await tokenOf(cookieHeader);
    if (token === undefined) return undefined;
    const { internalAdapter } = await context();
    const found = await internalAdapter.findSession(token);
    if (!found) return undefined;
    const nowMs = clock.wallMs();
    if (isOver(found.session, nowMs)) {
      await endToken(token);
      return undefined;
    }
    const expiresAt = nextExpiry(found.session, nowMs);
    if (expiresAt) await internalAdapter.updateSession(token, { expiresAt });
    return { token, userId: found.user.id, email: found.user.email };
  };

  const end = async (cookieHeader: string | undefined): Promise<void> => {
    const token = await tokenOf(cookieHeader);
    if (token !== undefined) await endToken(token);
  };

  /** What follows every successful sign-in: the device's earlier session and the user's dead ones go. */
  const begin = async (userId: string, headers: Headers, before: string | undefined): Promise<SignedIn> => {
    await end(before);
    await clearOver(userId);
    return { userId, setCookie: await cookieFrom(headers) };
  };

  const idOf = async (email: string): Promise<string | undefined> =>
    (await (await context()).internalAdapter.findUserByEmail(email))?.user.id;

  const insert = async ({ email, name, password }: Checked): Promise<string> => {
    const hash = password === undefined ? undefined : await hashPassword(password);
    const now = new Date(clock.wallMs());
    const times = { createdAt: now, updatedAt: now };
    return (await context()).adapter.transaction(async (inside) => {
      const user = await inside.create<Record<string, unknown>, { id: string }>({
        model: "user",
        data: { email, name, emailVerified: false, image: null, ...times },
      });
      if (hash !== undefined) {
        await inside.create({
          model: "account",
          data: { userId: user.id, providerId: "credential", accountId: user.id, password: hash, ...times },
        });
      }
      return user.id;
    });
  };

  /** Two at the same moment: the database keeps one e-mail, the other hears that it is taken. */
  const insertOnce = async (account: Checked): Promise<Result<{ userId: string }, "email_taken">> => {
    try {
      return ok({ userId: await insert(account) });
    } catch (error) {
      if ((await idOf(account.email)) !== undefined) return err("email_taken");
      throw error;
    }
  };

  const replacePassword = async (userId: string, password: string): Promise<void> => {
    const hash = await hashPassword(password);
    const { internalAdapter } = await context();
    await internalAdapter.deleteUserSessions(userId);
    const accounts = await internalAdapter.findAccounts(userId);
    if (accounts.some((account) => account.providerId === "credential")) {
      await internalAdapter.updatePassword(userId, hash);
      return;
    }
    await internalAdapter.createAccount({
      userId,
      providerId: "credential",
      accountId: userId,
      password: hash,
    });
  };

  return {
    find,
    end,
    idOf,
    check: checkAccount,
    replacePassword,
    removed: () => sessionCookie("", 0),

    create: async (account: NewAccount): Promise<Result<{ userId: string }, AccountRefusal>> => {
      const checked = checkAccount(account);
      if (!checked.ok) return checked;
      if ((await idOf(checked.value.email)) !== undefined) return err("email_taken");
      return insertOnce(checked.value);
    },

    /** Undefined when the e-mail or the password is wrong; which of them is told to nobody. */
    signIn: async (
      email: string,
      password: string,
      before: string | undefined,
    ): Promise<SignedIn | undefined> => {
      try {
        const { headers, response } = await library.api.signInEmail({
          body: { email: email.trim().toLowerCase(), password },
          returnHeaders: true,
        });
        return await begin(response.user.id, headers, before);
      } catch (error) {
        if (isAPIError(error) && (error.status === "UNAUTHORIZED" || error.status === "BAD_REQUEST")) {
          return undefined;
        }
        throw error;
      }
    },

    /** A session without a password; undefined when there is no such user. */
    enter: async (userId: string, before: string | undefined): Promise<SignedIn | undefined> => {
      const { headers, response } = await library.api.openSession({ body: { userId }, returnHeaders: true });
      return response.token === null ? undefined : begin(userId, headers, before);
    },

    endAll: async (userId: string): Promise<void> =>
      (await context()).internalAdapter.deleteUserSessions(userId),
  };
};

export type Accounts = ReturnType<typeof makeAccounts>;
