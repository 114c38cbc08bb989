import {
  type Clock,
  type CourtsidePrincipal,
  err,
  ok,
  type Result,
  type WallPrincipal,
} from "@courtloom/core";
import type { AuthStore, FoundCode, FoundCourtside } from "./auth-store.ts";
import { hashToken } from "./hash-token.ts";
import { readCookie } from "./read-cookie.ts";
import { makeSetCookie, type SetCookie } from "./set-cookie.ts";

export type CodePrincipal = CourtsidePrincipal | WallPrincipal;

/** What courtside sessions stand on. */
export interface CourtsideBase {
  readonly store: AuthStore;
  readonly clock: Clock;
  readonly secureCookies: boolean;
}

const nameOf = (base: CourtsideBase): string =>
  base.secureCookies ? "__Host-courtloom_courtside" : "courtloom_courtside";

export const courtsideCookie = (base: CourtsideBase, value: string, maxAge: number): SetCookie =>
  makeSetCookie(nameOf(base), value, { secure: base.secureCookies, maxAge });

/**
 * The session of a cookie header, over or not; undefined when it holds none that was ever given out. Kept and
 * found by hash alone: no comparison here takes a time that depends on the token.
 */
export const findCourtside = async (
  base: CourtsideBase,
  cookieHeader: string | undefined,
): Promise<FoundCourtside | undefined> => {
  const token = readCookie(cookieHeader, nameOf(base));
  return token ? base.store.findCourtside(hashToken(token)) : undefined;
};

export const principalFrom = (found: FoundCourtside): CodePrincipal => {
  const { academyId, sessionId, dayId, courtId } = found;
  return found.kind === "court" && courtId !== null
    ? { kind: "courtside", academyId, sessionId, dayId, name: found.name, courtId }
    : { kind: "wall", academyId, sessionId, dayId };
};

/** Whether a code, or a session with its code, may still be used. */
export const judgeCode = <C extends FoundCode>(code: C, nowMs: number): Result<C, "expired" | "revoked"> => {
  if (code.revokedMs !== null) return err("revoked");
  return code.expiresMs <= nowMs ? err("expired") : ok(code);
};
