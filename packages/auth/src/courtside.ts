import { randomUUID } from "node:crypto";
import {
  type Clock,
  type CourtsidePrincipal,
  err,
  ok,
  type Result,
  type WallPrincipal,
} from "@courtloom/core";
import type { Auth } from "./auth.ts";
import type { AuthStore, FoundCode, FoundCourtside } from "./auth-store.ts";
import type { CodeKeeping } from "./code-keeping.ts";
import { parseCode } from "./code-text.ts";
import { hashToken, makeToken } from "./hash-token.ts";
import type { Limits } from "./limits.ts";
import { parseName } from "./parse-name.ts";
import { readCookie } from "./read-cookie.ts";
import { makeSetCookie, type SetCookie } from "./set-cookie.ts";

type CodePrincipal = CourtsidePrincipal | WallPrincipal;
type Courtside = Pick<Auth, "enterWithCode" | "activeCourtside" | "revokeCourtside" | "leaveCourtside"> & {
  /** Undefined: no such cookie, or one that was never given out. */
  readonly find: (
    cookieHeader: string | undefined,
  ) => Promise<Result<CodePrincipal, "code_expired"> | undefined>;
};

interface CourtsideOptions {
  readonly store: AuthStore;
  readonly keeping: CodeKeeping;
  readonly limits: Limits;
  readonly clock: Clock;
  readonly secureCookies: boolean;
}

const principalFrom = (found: FoundCourtside): CodePrincipal => {
  const { academyId, sessionId, dayId, courtId } = found;
  return found.kind === "court" && courtId !== null
    ? { kind: "courtside", academyId, sessionId, dayId, name: found.name, courtId }
    : { kind: "wall", academyId, sessionId, dayId };
};

const judge = <C extends FoundCode>(code: C, nowMs: number): Result<C, "expired" | "revoked"> => {
  if (code.revokedMs !== null) return err("revoked");
  return code.expiresMs <= nowMs ? err("expired") : ok(code);
};

/** The cookie outlives its session, so that the phone hears "the code has expired" and not "who are you?". */
const REMEMBERED_MS = 30 * 24 * 3_600_000;

/** Phones and walls that come in with a code instead of an account. */
export const makeCourtside = ({
  store,
  keeping,
  limits,
  clock,
  secureCookies,
}: CourtsideOptions): Courtside => {
  const cookieName = secureCookies ? "__Host-courtloom_courtside" : "courtloom_courtside";
  const cookie = (value: string, maxAge: number): SetCookie =>
    makeSetCookie(cookieName, value, { secure: secureCookies, maxAge });

  /** Kept and found by hash alone: no comparison here takes a time that depends on the token. */
  const lookUp = async (cookieHeader: string | undefined): Promise<FoundCourtside | undefined> => {
    const token = readCookie(cookieHeader, cookieName);
    return token ? store.findCourtside(hashToken(token)) : undefined;
  };

  const open = async (code: FoundCode, name: string, nowMs: number) => {
    const token = makeToken();
    const sessionId = randomUUID();
    const { academyId, codeId, expiresMs } = code;
    await store.openCourtside({
      sessionId,
      academyId,
      codeId,
      tokenHash: hashToken(token),
      name,
      openedMs: nowMs,
      expiresMs,
    });
    const maxAge = Math.ceil((expiresMs - nowMs + REMEMBERED_MS) / 1000);
    return { setCookie: cookie(token, maxAge), principal: principalFrom({ ...code, sessionId, name }) };
  };

  const findCode = async (typed: string): Promise<FoundCode | undefined> => {
    const code = parseCode(typed);
    return code === undefined ? undefined : store.findCode(keeping.hash(code));
  };

  return {
    enterWithCode: async ({ code: typed, name: rawName, address }) => {
      const nowMs = clock.wallMs();
      const attempt = await limits.code(address, nowMs);
      if (!attempt.allowed) return err("too_many_tries");
      const found = await findCode(typed);
      if (found === undefined) return err("unknown_code");
      await attempt.giveBack(); // A code that exists, even an old one, was not guessed.
      const code = judge(found, nowMs);
      if (!code.ok) return code;
      const name = found.kind === "wall" ? "" : parseName(rawName);
      return name === undefined ? err("bad_name") : ok(await open(found, name, nowMs));
    },

    find: async (cookieHeader) => {
      const found = await lookUp(cookieHeader);
      if (found === undefined) return undefined;
      return judge(found, clock.wallMs()).ok ? ok(principalFrom(found)) : err("code_expired");
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
      const found = await lookUp(cookieHeader);
      if (found !== undefined) {
        const { academyId, sessionId } = found;
        await store.revokeCourtside({ academyId, sessionId, atMs: clock.wallMs() });
      }
      return { setCookie: cookie("", 0) };
    },
  };
};
