import { err, ok } from "@courtloom/core";
import { beginWithPassword, type SessionBase } from "./account-session.ts";
import type { Auth } from "./auth.ts";
import type { Limits } from "./limits.ts";
import { HashingBusyError } from "./password-hash.ts";

/** Tries are counted before the password is looked at, and forgotten when it was right. */
export const makeSignIn =
  (base: SessionBase, limits: Limits): Auth["signIn"] =>
  async ({ email, password, address, cookieHeader }) => {
    const attempt = await limits.signIn(email, address, base.clock.wallMs());
    if (!attempt.allowed) return err("too_many_tries");
    try {
      const signedIn = await beginWithPassword(base, { email, password }, cookieHeader);
      if (signedIn === undefined) return err("wrong_credentials");
      await attempt.forget();
      return ok(signedIn);
    } catch (error) {
      if (error instanceof HashingBusyError) return err("too_many_tries");
      throw error;
    }
  };
