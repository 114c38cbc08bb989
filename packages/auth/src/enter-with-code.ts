import { randomUUID } from "node:crypto";
import { err, ok, type Result } from "@courtloom/core";
import type { Auth, CodeRefusal } from "./auth.ts";
import type { FoundCode } from "./auth-store.ts";
import type { CodeKeeping } from "./code-keeping.ts";
import { parseCode } from "./code-text.ts";
import {
  type CodePrincipal,
  type CourtsideBase,
  courtsideCookie,
  judgeCode,
  principalFrom,
} from "./courtside-base.ts";
import { hashToken, makeToken } from "./hash-token.ts";
import type { Limits } from "./limits.ts";
import { parseName } from "./parse-name.ts";
import type { SetCookie } from "./set-cookie.ts";

/** The cookie outlives its session, so that the phone hears "the code has expired" and not "who are you?". */
const REMEMBERED_MS = 30 * 24 * 3_600_000;

/** A courtside session that is about to be opened under a code, with the cookie for it. */
export const prepareCourtside = (base: CourtsideBase, code: FoundCode, name: string) => {
  const openedMs = base.clock.wallMs();
  const token = makeToken();
  const sessionId = randomUUID();
  const { academyId, codeId, expiresMs } = code;
  const tokenHash = hashToken(token);
  const maxAge = Math.ceil((expiresMs - openedMs + REMEMBERED_MS) / 1000);
  return {
    session: { sessionId, academyId, codeId, tokenHash, name, openedMs, expiresMs },
    setCookie: courtsideCookie(base, token, maxAge),
    principal: principalFrom({ ...code, sessionId, name }),
  };
};

/** Opens a session under a code that may be used, for a name that can be shown; a wall has none. */
export const openCourtside = async (
  base: CourtsideBase,
  found: FoundCode,
  rawName: string,
): Promise<Result<{ readonly setCookie: SetCookie; readonly principal: CodePrincipal }, CodeRefusal>> => {
  const code = judgeCode(found, base.clock.wallMs());
  if (!code.ok) return code;
  const name = found.kind === "wall" ? "" : parseName(rawName);
  if (name === undefined) return err("bad_name");
  const { session, setCookie, principal } = prepareCourtside(base, found, name);
  await base.store.openCourtside(session);
  return ok({ setCookie, principal });
};

/** Opens a courtside session for who types a code that may be used. A wrong code counts against its network. */
export const makeEnterWithCode =
  (base: CourtsideBase, keeping: CodeKeeping, limits: Limits): Auth["enterWithCode"] =>
  async ({ code: typed, name, address }) => {
    const attempt = await limits.code(address, base.clock.wallMs());
    if (!attempt.allowed) return err("too_many_tries");
    const parsed = parseCode(typed);
    const found = parsed === undefined ? undefined : await base.store.findCode(keeping.hash(parsed));
    if (found === undefined) return err("unknown_code");
    await attempt.giveBack(); // A code that exists, even an old one, was not guessed.
    return openCourtside(base, found, name);
  };
