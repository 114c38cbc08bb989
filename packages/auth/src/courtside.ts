import { err, ok, type Result } from "@courtloom/core";
import type { Auth } from "./auth.ts";
import {
  type CodePrincipal,
  type CourtsideBase,
  courtsideCookie,
  findCourtside,
  judgeCode,
  principalFrom,
} from "./courtside-base.ts";

export type Courtside = Pick<Auth, "activeCourtside" | "revokeCourtside" | "leaveCourtside"> & {
  /** Undefined: no such cookie, or one that was never given out. */
  readonly find: (
    cookieHeader: string | undefined,
  ) => Promise<Result<CodePrincipal, "code_expired"> | undefined>;
};

/** Phones and walls that are in with a code instead of an account. */
export const makeCourtside = (base: CourtsideBase): Courtside => {
  const { store, clock } = base;
  return {
    find: async (cookieHeader) => {
      const found = await findCourtside(base, cookieHeader);
      if (found === undefined) return undefined;
      return judgeCode(found, clock.wallMs()).ok ? ok(principalFrom(found)) : err("code_expired");
    },

    activeCourtside: async (academyId, dayId) =>
      (await store.activeCourtside({ academyId, dayId, nowMs: clock.wallMs() })).map((found) => ({
        sessionId: found.sessionId,
        codeId: found.codeId,
        kind: found.kind,
        courtId: found.courtId,
        name: found.name,
        openedMs: found.openedMs,
      })),

    revokeCourtside: (academyId, sessionId) =>
      store.revokeCourtside({ academyId, sessionId, atMs: clock.wallMs() }),

    leaveCourtside: async (cookieHeader) => {
      const found = await findCourtside(base, cookieHeader);
      if (found !== undefined) {
        const { academyId, sessionId } = found;
        await store.revokeCourtside({ academyId, sessionId, atMs: clock.wallMs() });
      }
      return { setCookie: courtsideCookie(base, "", 0) };
    },
  };
};
