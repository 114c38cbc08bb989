import { err } from "@courtloom/core";
import { replacePassword } from "./account-record.ts";
import { findSession, type SessionBase } from "./account-session.ts";
import type { Auth } from "./auth.ts";
import { checkPassword } from "./check-password.ts";

/** Proves the present password as a sign-in does, tries counted, before another takes its place. */
export const makeChangePassword =
  (base: SessionBase, signIn: Auth["signIn"]): Auth["changePassword"] =>
  async ({ cookieHeader, current, next, address }) => {
    const session = await findSession(base, cookieHeader);
    if (session === undefined) return err("signed_out");
    const { email, userId } = session;
    const [localPart = ""] = email.split("@");
    const judged = checkPassword(next, [email, localPart, current]);
    if (!judged.ok) return judged;
    const proven = await signIn({ email, password: current, address, cookieHeader });
    if (!proven.ok) return proven;
    await replacePassword(base.library, userId, next);
    return signIn({ email, password: next, address });
  };
