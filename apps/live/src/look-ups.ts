import type { Clock, Principal, Result } from "@courtloom/core";
import type { DayStore, MatchCard, MatchRef } from "./store.ts";
import { createTtlCache } from "./ttl-cache.ts";

/**
 * How old an answer may be: who somebody is (with a look every second, a revoked session is cut off within
 * two seconds), and where a match is played.
 */
const PRINCIPAL_TTL_MS = 1_000;
const CARD_TTL_MS = 2_000;

export type SessionRefusal = "signed_out" | "code_expired";
/** Which of a device's two sessions speaks first: a person's account, or the court's code that it holds too. */
export type Speaks = "account" | "courtside";
/** The session that speaks if it is good, else the other. Rejects when it cannot be asked. */
export type PrincipalOf = (
  cookieHeader: string | undefined,
  speaks: Speaks,
) => Promise<Result<Principal, SessionRefusal>>;

/** What authority is worked out from, asked at most every two seconds per session and match. */
export interface LookUps {
  readonly principalOf: PrincipalOf;
  readonly matchCard: (match: MatchRef) => Promise<MatchCard | undefined>;
}

export const createLookUps = (clock: Clock, principalOf: PrincipalOf, days: DayStore): LookUps => {
  const principals = createTtlCache<Awaited<ReturnType<PrincipalOf>>>(clock, PRINCIPAL_TTL_MS);
  const cards = createTtlCache<MatchCard | undefined>(clock, CARD_TTL_MS);
  return {
    principalOf: (cookie, speaks) =>
      principals.get(`${speaks} ${cookie ?? ""}`, () => principalOf(cookie, speaks)),
    matchCard: (match) => cards.get(`${match.academyId}/${match.matchId}`, () => days.matchCard(match)),
  };
};
