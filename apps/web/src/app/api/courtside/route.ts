import { isOwnOrigin, readBody } from "@courtloom/api";
import { answerCourtside, codeTrouble, courtsideOf } from "../../../courtside/answer-courtside.ts";
import { parseEnter } from "../../../courtside/parse-enter.ts";
import { guarded, isJson, MOST_BYTES, NO_STORE, refuse, sourceOf } from "../../../courtside/respond.ts";
import { addressOf } from "../../../server/address-of.ts";
import type { Services } from "../../../server/services.ts";

export const dynamic = "force-dynamic";

const read = async (all: Services, cookieHeader: string | undefined, matchId: string | null) => {
  const answer = await answerCourtside(all.auth, sourceOf(all), { cookieHeader, matchId });
  return answer.ok ? Response.json(answer.value, { headers: NO_STORE }) : refuse(answer.error);
};

/** The court and matches of whoever is in on this phone. */
export const GET = guarded((request, all) =>
  read(all, request.headers.get("cookie") ?? undefined, new URL(request.url).searchParams.get("match")),
);

/**
 * Lets a phone in with a court code, or with a hand-over code, which says which match it goes on with. A wall's
 * code opens no pad: its session ends again at once.
 */
export const POST = guarded(async (request, all) => {
  if (!isOwnOrigin(request)) return refuse("forbidden");
  const text = isJson(request) ? await readBody(request, MOST_BYTES) : undefined;
  const enter = text?.ok ? parseEnter(text.value) : undefined;
  if (enter === undefined) return refuse("bad_shape");
  const cookieHeader = request.headers.get("cookie") ?? undefined;
  const address = addressOf(request.headers);
  const entered = await all.auth.enterPad({ ...enter, address, cookieHeader });
  if (!entered.ok) return refuse(codeTrouble(entered.error));
  const { principal, setCookie, handedOver } = entered.value;
  if (principal.kind === "wall") {
    await all.auth.revokeCourtside(principal.academyId, principal.sessionId);
    return refuse("code_unknown");
  }
  const answer = await courtsideOf(principal, sourceOf(all), handedOver?.matchId ?? null);
  const handed = answer.ok && handedOver ? { ...answer.value, handedOver } : undefined;
  const response = answer.ok
    ? Response.json(handed ?? answer.value, { headers: NO_STORE })
    : refuse(answer.error);
  if (setCookie) response.headers.append("set-cookie", setCookie.header);
  return response;
});

/** Ends this phone's session; what it has charted stays on it until it is sent. */
export const DELETE = guarded(async (request, { auth }) => {
  if (!isOwnOrigin(request)) return refuse("forbidden");
  const { setCookie } = await auth.leaveCourtside(request.headers.get("cookie") ?? undefined);
  return new Response(null, { status: 204, headers: { ...NO_STORE, "set-cookie": setCookie.header } });
});
