import { type AccountPrincipal, type CourtsidePrincipal, err, ok, type Result } from "@courtloom/core";
import type { Auth, PadCodeRefusal, PadEntered } from "./auth.ts";
import type { FoundHandOver, LeadHolder } from "./auth-store.ts";
import type { CodeKeeping } from "./code-keeping.ts";
import { parseCode } from "./code-text.ts";
import { type CourtsideBase, judgeCode } from "./courtside-base.ts";
import { openCourtside, prepareCourtside } from "./enter-with-code.ts";
import { HAND_OVER_MS, holderOf } from "./hand-overs.ts";
import type { Limits } from "./limits.ts";
import { parseName } from "./parse-name.ts";

interface EnterPadMeans {
  readonly keeping: CodeKeeping;
  readonly limits: Limits;
  readonly principalOf: Auth["principalOf"];
}

type Known = AccountPrincipal | CourtsidePrincipal;

const sameName = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

const isHolder = (granted: LeadHolder, known: Known | undefined): boolean => {
  const own = known && holderOf(known);
  return granted.kind === own?.kind && granted.id === own.id;
};

/**
 * Who of those on this device goes on under this name: its session on that court, or where it has none, its
 * account. Another name is another person, who gets a session of their own.
 */
const knownAs = async (
  principalOf: Auth["principalOf"],
  cookieHeader: string | undefined,
  code: FoundHandOver,
  name: string,
): Promise<Known | undefined> => {
  const there = await principalOf(cookieHeader, "courtside");
  if (there.ok && there.value.kind === "courtside") {
    const { academyId, dayId, courtId } = there.value;
    const here = academyId === code.academyId && dayId === code.dayId && courtId === code.courtId;
    if (here) return sameName(there.value.name, name) ? there.value : undefined;
  }
  const found = await principalOf(cookieHeader, "account");
  if (!found.ok || found.value.kind !== "account") return undefined;
  const { academyId, name: called } = found.value;
  return academyId === code.academyId && sameName(called, name) ? found.value : undefined;
};

/** Whether it may be entered at all; that nobody else does at the same moment is for the store to see to. */
const judgeHandOver = (
  code: FoundHandOver,
  known: Known | undefined,
  nowMs: number,
): PadCodeRefusal | undefined => {
  const { granted, withdrawnMs, leads } = code;
  const isTheirs = granted !== null && isHolder(granted, known);
  if (granted !== null && !isTheirs) return "hand_over_used";
  const endsMs = granted === null ? code.endsMs : granted.untilMs;
  const ended = withdrawnMs !== null || !leads || endsMs <= nowMs || !judgeCode(code, nowMs).ok;
  return ended ? "hand_over_ended" : undefined;
};

const accept = async (
  base: CourtsideBase,
  code: FoundHandOver,
  known: Known | undefined,
  name: string,
): Promise<Result<PadEntered, PadCodeRefusal>> => {
  const { matchId, chartist: by, level, academyId, handOverId } = code;
  const handedOver = { matchId, by, level };
  if (known && code.granted) return ok({ principal: known, handedOver });
  const atMs = base.clock.wallMs();
  const untilMs = atMs + HAND_OVER_MS;
  if (known) {
    const to = holderOf(known);
    const accepted = await base.store.acceptHandOver({ academyId, handOverId, to, atMs, untilMs });
    return accepted ? ok({ principal: known, handedOver }) : err("hand_over_used");
  }
  const { session, setCookie, principal } = prepareCourtside(base, code, name);
  const to = { kind: "courtside", id: session.sessionId } as const;
  const accepted = await base.store.acceptHandOver({ academyId, handOverId, to, atMs, untilMs, session });
  return accepted ? ok({ principal, setCookie, handedOver }) : err("hand_over_used");
};

/** One form for both kinds of code, and one count of wrong ones. SPEC AU23 to AU25. */
export const makeEnterPad =
  (base: CourtsideBase, { keeping, limits, principalOf }: EnterPadMeans): Auth["enterPad"] =>
  async ({ code: typed, name: rawName, address, cookieHeader }) => {
    const attempt = await limits.code(address, base.clock.wallMs());
    if (!attempt.allowed) return err("too_many_tries");
    const parsed = parseCode(typed);
    if (parsed === undefined) return err("unknown_code");
    const hash = keeping.hash(parsed);
    const found = await base.store.findCode(hash);
    const handOver = found ? undefined : await base.store.findHandOver(hash);
    if (!found && !handOver) return err("unknown_code");
    await attempt.giveBack();
    if (found) return openCourtside(base, found, rawName);
    if (!handOver) return err("unknown_code");
    const name = parseName(rawName);
    if (name === undefined) return err("bad_name");
    const known = await knownAs(principalOf, cookieHeader, handOver, name);
    const refusal = judgeHandOver(handOver, known, base.clock.wallMs());
    return refusal ? err(refusal) : accept(base, handOver, known, name);
  };
