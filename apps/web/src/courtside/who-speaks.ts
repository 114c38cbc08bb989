import type { Auth } from "@courtloom/auth";
import type { CourtsideSource } from "./list-matches.ts";

/**
 * Who speaks: the court's code for its own court, also where the device holds an account; the account for a
 * match elsewhere. So a match is charted as one and the same person, whichever link opened the pad.
 */
export const whoSpeaks = async (
  auth: Pick<Auth, "principalOf">,
  source: Pick<CourtsideSource, "matchCard">,
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
