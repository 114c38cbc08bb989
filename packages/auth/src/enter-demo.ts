import { err, ok } from "@courtloom/core";
import { beginAs, type SessionBase } from "./account-session.ts";
import type { Auth } from "./auth.ts";
import type { AuthStore } from "./auth-store.ts";

/** The demonstration's director must act for the demonstration alone: no password guards that way in. */
export const makeEnterDemo =
  (base: SessionBase, store: AuthStore): Auth["enterDemo"] =>
  async (cookieHeader) => {
    const demo = await store.demoDirector();
    const membership = demo && (await store.membershipOf(demo.userId));
    if (!demo || membership?.academyId !== demo.academyId) return err("no_demo");
    const signedIn = await beginAs(base, demo.userId, cookieHeader);
    return signedIn ? ok(signedIn) : err("no_demo");
  };
