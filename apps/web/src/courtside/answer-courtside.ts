import type { Auth, PadCodeRefusal } from "@courtloom/auth";
import { err, ok, type Principal, type Result } from "@courtloom/core";
import type { Courtside, CourtsideRefusalCode } from "../pad/courtside.ts";
import { type CourtsideSource, courtOfDay, matchForStaff } from "./list-matches.ts";
import { whoSpeaks } from "./who-speaks.ts";

export type Answer = Result<Courtside, CourtsideRefusalCode>;

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/i;

const CODE_TROUBLE = {
  unknown_code: "code_unknown",
  expired: "code_expired",
  revoked: "code_expired",
  bad_name: "name_missing",
  too_many_tries: "too_many",
  hand_over_used: "code_used",
  hand_over_ended: "code_lapsed",
} as const satisfies Record<PadCodeRefusal, CourtsideRefusalCode>;

export const codeTrouble = (refusal: PadCodeRefusal): CourtsideRefusalCode => CODE_TROUBLE[refusal];

/** The court of whoever's phone this is; with `matchId`, the match that a member of staff names. */
export const answerCourtside = async (
  auth: Pick<Auth, "principalOf">,
  source: CourtsideSource,
  asked: { readonly cookieHeader: string | undefined; readonly matchId: string | null },
): Promise<Answer> => {
  const { matchId } = asked;
  if (matchId !== null && !UUID.test(matchId)) return err("unknown_match");
  const found = await whoSpeaks(auth, source, asked);
  return found.ok ? courtsideOf(found.value, source, matchId) : err(found.error);
};

/** The same for somebody who is known: their own court, or the match that staff name or were handed. */
export const courtsideOf = async (
  principal: Principal,
  source: CourtsideSource,
  matchId: string | null,
): Promise<Answer> => {
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
