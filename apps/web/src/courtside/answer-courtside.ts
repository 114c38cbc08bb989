import type { Auth, CodeRefusal } from "@courtloom/auth";
import { err, ok, type Result } from "@courtloom/core";
import type { Courtside, CourtsideRefusalCode } from "../pad/courtside.ts";
import { type CourtsideSource, courtOfDay, matchForStaff } from "./list-matches.ts";

export type Answer = Result<Courtside, CourtsideRefusalCode>;

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/i;

const CODE_TROUBLE = {
  unknown_code: "code_unknown",
  expired: "code_expired",
  revoked: "code_expired",
  bad_name: "name_missing",
  too_many_tries: "too_many",
} as const satisfies Record<CodeRefusal, CourtsideRefusalCode>;

export const codeTrouble = (refusal: CodeRefusal): CourtsideRefusalCode => CODE_TROUBLE[refusal];

/**
 * Who speaks: the court's code for its own court, also where the device holds an account; the account for a
 * match elsewhere. So a match is charted as one and the same person, whichever link opened the pad.
 */
const whoSpeaks = async (
  auth: Pick<Auth, "principalOf">,
  source: CourtsideSource,
  asked: { readonly cookieHeader: string | undefined; readonly matchId: string | null },
): ReturnType<Auth["principalOf"]> => {
  const { cookieHeader, matchId } = asked;
  const found = await auth.principalOf(cookieHeader, "courtside");
  if (matchId === null || (found.ok && found.value.kind === "account")) return found;
  if (found.ok && found.value.kind === "courtside") {
    const { academyId, dayId, courtId } = found.value;
    const match = await source.matchCard({ academyId, matchId });
    if (match?.dayId === dayId && match.courtId === courtId) return found;
  }
  return auth.principalOf(cookieHeader, "account");
};

/** The court of whoever's phone this is; with `matchId`, the match that a member of staff names. */
export const answerCourtside = async (
  auth: Pick<Auth, "principalOf">,
  source: CourtsideSource,
  asked: { readonly cookieHeader: string | undefined; readonly matchId: string | null },
): Promise<Answer> => {
  const { matchId } = asked;
  if (matchId !== null && !UUID.test(matchId)) return err("unknown_match");
  const found = await whoSpeaks(auth, source, asked);
  if (!found.ok) return err(found.error);
  const principal = found.value;
  if (principal.kind === "wall") return err("forbidden");
  if (principal.kind === "courtside") {
    const there = await courtOfDay(source, principal, principal.name);
    if (!there) return err("code_expired");
    if (matchId !== null && !there.matches.some((match) => match.matchId === matchId))
      return err("forbidden");
    const { court, matches } = there;
    return ok({ courtName: court.name, chartist: principal.name, staff: false, matches });
  }
  // A member of staff who names no match has no court: the page asks for a code.
  if (matchId === null) return err("signed_out");
  const there = await matchForStaff(source, principal.academyId, matchId, principal.name);
  return there ? ok({ ...there, chartist: principal.name, staff: true }) : err("unknown_match");
};
