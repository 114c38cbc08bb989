import type { CourtWords } from "@courtloom/api";
import type { Auth } from "@courtloom/auth";
import { type AccountPrincipal, err, ok, type Result } from "@courtloom/core";
import type { CourtsideRefusalCode } from "../../pad/courtside.ts";
import type { CourtsideSource } from "../list-matches.ts";
import { whoSpeaks } from "../who-speaks.ts";

export interface CourtWordsMeans {
  readonly auth: Pick<Auth, "principalOf">;
  readonly source: Pick<CourtsideSource, "matchCard">;
  /** Asks the procedure as this member. */
  readonly courtWords: (
    member: AccountPrincipal,
    matchId: string,
  ) => Promise<Result<CourtWords | null, CourtsideRefusalCode>>;
}

interface Asked {
  readonly cookieHeader: string | undefined;
  readonly matchId: string | null;
}

/** For the pad of a signed-in member. Where the court's code speaks, the device's account does not help. SPEC CM4, CM7. */
export const answerCourtWords = async (
  { auth, source, courtWords }: CourtWordsMeans,
  { cookieHeader, matchId }: Asked,
): Promise<Result<{ readonly said: CourtWords | null }, CourtsideRefusalCode>> => {
  if (matchId === null) return err("bad_shape");
  const found = await whoSpeaks(auth, source, { cookieHeader, matchId });
  if (!found.ok) return err(found.error);
  if (found.value.kind !== "account") return err("forbidden");
  const said = await courtWords(found.value, matchId);
  return said.ok ? ok({ said: said.value }) : said;
};
