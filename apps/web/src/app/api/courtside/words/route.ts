import { type CourtWords, createCaller } from "@courtloom/api";
import { type AccountPrincipal, err, ok, type Result } from "@courtloom/core";
import { TRPCError } from "@trpc/server";
import { guarded, NO_STORE, refuse, sourceOf } from "../../../../courtside/respond.ts";
import { answerCourtWords } from "../../../../courtside/words/answer-court-words.ts";
import type { CourtsideRefusalCode } from "../../../../pad/courtside.ts";
import { apiContext } from "../../../../server/api-context.ts";

export const dynamic = "force-dynamic";

const refuseCookie = (): never => {
  throw new Error("bug: asking for words sets no cookie");
};

const REFUSED: Partial<Record<TRPCError["code"], CourtsideRefusalCode>> = {
  NOT_FOUND: "unknown_match",
  BAD_REQUEST: "bad_shape",
  FORBIDDEN: "forbidden",
};

const courtWordsAs =
  (headers: Headers) =>
  async (
    member: AccountPrincipal,
    matchId: string,
  ): Promise<Result<CourtWords | null, CourtsideRefusalCode>> => {
    const api = createCaller({ ...apiContext(headers, refuseCookie), principal: async () => ok(member) });
    try {
      return ok(await api.plan.courtWords({ matchId }));
    } catch (error) {
      const code = error instanceof TRPCError ? REFUSED[error.code] : undefined;
      if (code === undefined) throw error;
      return err(code);
    }
  };

/** The plan's words for the pad of whoever is signed in on this phone, as the coaching mode lets a pad have them. */
export const GET = guarded(async (request, all) => {
  const answer = await answerCourtWords(
    { auth: all.auth, source: sourceOf(all), courtWords: courtWordsAs(request.headers) },
    {
      cookieHeader: request.headers.get("cookie") ?? undefined,
      matchId: new URL(request.url).searchParams.get("match"),
    },
  );
  return answer.ok ? Response.json(answer.value, { headers: NO_STORE }) : refuse(answer.error);
});
