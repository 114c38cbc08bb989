import { createAccountLibrary } from "./account-library.ts";
import { createAccountRecord } from "./account-record.ts";
import { endSession, endSessionsOf, removedCookie, type SessionBase } from "./account-session.ts";
import type { Auth, AuthOptions } from "./auth.ts";
import { makeChangePassword } from "./change-password.ts";
import { makeCodeKeeping } from "./code-keeping.ts";
import { makeCodes } from "./codes.ts";
import { makeCourtside } from "./courtside.ts";
import { makeCreateDirector } from "./create-director.ts";
import { makeEnterDemo } from "./enter-demo.ts";
import { makeEnterPad } from "./enter-pad.ts";
import { makeEnterWithCode } from "./enter-with-code.ts";
import { makeHandOvers } from "./hand-overs.ts";
import { makeHandler } from "./handler.ts";
import { makeLimits } from "./limits.ts";
import { makePrincipalOf } from "./principal-of.ts";
import { makeSignIn } from "./sign-in.ts";

/** Accounts, codes and sessions over the stores that the application hands in. See `Auth` for what each call does. */
export const createAuth = (options: AuthOptions): Auth => {
  const { store, secret, clock, secureCookies } = options;
  const library = createAccountLibrary(options);
  const base: SessionBase = { library, clock, secureCookies };
  const limits = makeLimits(store, secret);
  const keeping = makeCodeKeeping(secret);
  const { find, ...courtside } = makeCourtside({ store, clock, secureCookies });
  const courtsideBase = { store, clock, secureCookies };
  const principalOf = makePrincipalOf(base, store, find);
  const signIn = makeSignIn(base, limits);
  const signOut: Auth["signOut"] = async (cookieHeader) => {
    await endSession(base, cookieHeader);
    return { setCookie: await removedCookie(base) };
  };

  return {
    handler: makeHandler({ signIn, signOut, options }),
    principalOf,
    createDirector: makeCreateDirector(base, store),
    createAccount: (account) => createAccountRecord(library, clock, account),
    signIn,
    signOut,
    enterDemo: makeEnterDemo(base, store),
    changePassword: makeChangePassword(base, signIn),
    endSessionsOf: (userId) => endSessionsOf(base, userId),
    ...makeCodes({ store, keeping, clock }),
    enterWithCode: makeEnterWithCode(courtsideBase, keeping, limits),
    enterPad: makeEnterPad(courtsideBase, { keeping, limits, principalOf }),
    ...makeHandOvers({ store, keeping, clock, limits }),
    ...courtside,
  };
};
