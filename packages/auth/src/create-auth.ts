import { err, ok, type Principal, type Result } from "@courtloom/core";
import { createAccountLibrary } from "./account-library.ts";
import { type Accounts, makeAccounts } from "./accounts.ts";
import type { Auth, AuthOptions, SessionRefusal, SignedIn, SignInRefusal } from "./auth.ts";
import type { AuthStore } from "./auth-store.ts";
import { checkPassword } from "./check-password.ts";
import { makeCodeKeeping } from "./code-keeping.ts";
import { makeCodes } from "./codes.ts";
import { makeCourtside } from "./courtside.ts";
import { makeHandler } from "./handler.ts";
import { makeLimits } from "./limits.ts";
import { HashingBusyError } from "./password-hash.ts";

type Found = Result<Principal, SessionRefusal>;

const makeFindAccount =
  (accounts: Accounts, store: AuthStore) =>
  async (cookieHeader: string | undefined): Promise<Found> => {
    const session = await accounts.find(cookieHeader);
    const membership = session && (await store.membershipOf(session.userId));
    if (!session || !membership) return err("signed_out");
    const { academyId, memberId, name, role } = membership;
    return ok({ kind: "account", academyId, memberId, name, role, userId: session.userId });
  };

const makePrincipalOf = (
  findAccount: (cookieHeader: string | undefined) => Promise<Found>,
  findCourtside: ReturnType<typeof makeCourtside>["find"],
): Auth["principalOf"] => {
  const preferCourtside: Auth["principalOf"] = async (cookieHeader) => {
    const courtside = await findCourtside(cookieHeader);
    if (courtside?.ok) return courtside;
    const account = await findAccount(cookieHeader);
    return account.ok ? account : (courtside ?? account);
  };
  const preferAccount: Auth["principalOf"] = async (cookieHeader) => {
    const account = await findAccount(cookieHeader);
    return account.ok ? account : ((await findCourtside(cookieHeader)) ?? account);
  };
  return (cookieHeader, prefer = "account") =>
    prefer === "account" ? preferAccount(cookieHeader) : preferCourtside(cookieHeader);
};

/** Tries are counted before the password is looked at, and forgotten when it was right. */
const makeSignIn =
  (accounts: Accounts, limits: ReturnType<typeof makeLimits>, { clock }: AuthOptions): Auth["signIn"] =>
  async ({ email, password, address, cookieHeader }): Promise<Result<SignedIn, SignInRefusal>> => {
    const attempt = await limits.signIn(email, address, clock.wallMs());
    if (!attempt.allowed) return err("too_many_tries");
    try {
      const signedIn = await accounts.signIn(email, password, cookieHeader);
      if (signedIn === undefined) return err("wrong_credentials");
      await attempt.forget();
      return ok(signedIn);
    } catch (error) {
      if (error instanceof HashingBusyError) return err("too_many_tries");
      throw error;
    }
  };

const makeCreateDirector =
  (accounts: Accounts, store: AuthStore): Auth["createDirector"] =>
  async (account) => {
    if (await store.hasDirector()) return err("already_set_up");
    const created = await accounts.create(account);
    if (created.ok || created.error !== "email_taken") return created;
    // A set-up that broke off between account and academy may be repeated; an account in use may not be taken.
    const checked = accounts.check(account);
    const userId = checked.ok ? await accounts.idOf(checked.value.email) : undefined;
    if (userId === undefined || (await store.membershipOf(userId)) !== undefined) return created;
    await accounts.replacePassword(userId, account.password);
    return ok({ userId });
  };

const makeChangePassword =
  (accounts: Accounts, signIn: Auth["signIn"]): Auth["changePassword"] =>
  async ({ cookieHeader, current, next, address }) => {
    const session = await accounts.find(cookieHeader);
    if (session === undefined) return err("signed_out");
    const [localPart = ""] = session.email.split("@");
    const judged = checkPassword(next, [session.email, localPart, current]);
    if (!judged.ok) return judged;
    const proven = await signIn({ email: session.email, password: current, address, cookieHeader });
    if (!proven.ok) return proven;
    await accounts.replacePassword(session.userId, next);
    return signIn({ email: session.email, password: next, address });
  };

/** The demonstration's director must act for the demonstration alone: no password guards that way in. */
const makeEnterDemo =
  (accounts: Accounts, store: AuthStore): Auth["enterDemo"] =>
  async (cookieHeader) => {
    const demo = await store.demoDirector();
    const membership = demo && (await store.membershipOf(demo.userId));
    if (!demo || membership?.academyId !== demo.academyId) return err("no_demo");
    const signedIn = await accounts.enter(demo.userId, cookieHeader);
    return signedIn ? ok(signedIn) : err("no_demo");
  };

/** Accounts, codes and sessions over the stores that the application hands in. See `Auth` for what each call does. */
export const createAuth = (options: AuthOptions): Auth => {
  const { store, secret, clock, secureCookies } = options;
  const accounts = makeAccounts(createAccountLibrary(options), clock, secureCookies);
  const limits = makeLimits(store, secret);
  const keeping = makeCodeKeeping(secret);
  const { find: findCourtside, ...courtside } = makeCourtside({
    store,
    keeping,
    limits,
    clock,
    secureCookies,
  });
  const signIn = makeSignIn(accounts, limits, options);
  const signOut: Auth["signOut"] = async (cookieHeader) => {
    await accounts.end(cookieHeader);
    return { setCookie: await accounts.removed() };
  };

  return {
    handler: makeHandler({ signIn, signOut, options }),
    principalOf: makePrincipalOf(makeFindAccount(accounts, store), findCourtside),
    createDirector: makeCreateDirector(accounts, store),
    createAccount: accounts.create,
    signIn,
    signOut,
    enterDemo: makeEnterDemo(accounts, store),
    changePassword: makeChangePassword(accounts, signIn),
    endSessionsOf: accounts.endAll,
    ...makeCodes({ store, keeping, clock }),
    ...courtside,
  };
};
