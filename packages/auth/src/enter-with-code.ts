import { randomUUID } from "node:crypto";
import { err, ok } from "@courtloom/core";
import type { Auth } from "./auth.ts";
import type { FoundCode } from "./auth-store.ts";
import type { CodeKeeping } from "./code-keeping.ts";
import { parseCode } from "./code-text.ts";
import { type CourtsideBase, courtsideCookie, judgeCode, principalFrom } from "./courtside-base.ts";
import { hashToken, makeToken } from "./hash-token.ts";
import type { Limits } from "./limits.ts";
import { parseName } from "./parse-name.ts";

/** The cookie outlives its session, so that the phone hears "the code has expired" and not "who are you?". */
const REMEMBERED_MS = 30 * 24 * 3_600_000;

const open = async (base: CourtsideBase, code: FoundCode, name: string) => {
  const openedMs = base.clock.wallMs();
  const token = makeToken();
  const sessionId = randomUUID();
  const { academyId, codeId, expiresMs } = code;
  const tokenHash = hashToken(token);
  await base.store.openCourtside({ sessionId, academyId, codeId, tokenHash, name, openedMs, expiresMs });
  const maxAge = Math.ceil((expiresMs - openedMs + REMEMBERED_MS) / 1000);
  return {
    setCookie: courtsideCookie(base, token, maxAge),
    principal: principalFrom({ ...code, sessionId, name }),
  };
};

/** Opens a courtside session for who types a code that may be used. A wrong code counts against its network. */
export const makeEnterWithCode =
  (base: CourtsideBase, keeping: CodeKeeping, limits: Limits): Auth["enterWithCode"] =>
  async ({ code: typed, name: rawName, address }) => {
    const attempt = await limits.code(address, base.clock.wallMs());
    if (!attempt.allowed) return err("too_many_tries");
    const parsed = parseCode(typed);
    const found = parsed === undefined ? undefined : await base.store.findCode(keeping.hash(parsed));
    if (found === undefined) return err("unknown_code");
    await attempt.giveBack(); // A code that exists, even an old one, was not guessed.
    const code = judgeCode(found, base.clock.wallMs());
    if (!code.ok) return code;
    const name = found.kind === "wall" ? "" : parseName(rawName);
    return name === undefined ? err("bad_name") : ok(await open(base, found, name));
  };
