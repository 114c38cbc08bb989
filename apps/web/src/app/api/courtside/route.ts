import { isOwnOrigin, readBody } from "@courtloom/api";
import { answerCourtside, codeTrouble } from "../../../courtside/answer-courtside.ts";
import type { CourtsideSource } from "../../../courtside/list-matches.ts";
import { parseEnter } from "../../../courtside/parse-enter.ts";
import type { CourtsideRefusalCode, CourtsideRefused } from "../../../pad/courtside.ts";
import { addressOf } from "../../../server/address-of.ts";
import { log } from "../../../server/log.ts";
import { type Services, services } from "../../../server/services.ts";

export const dynamic = "force-dynamic";

const MOST_BYTES = 2048;
const WAIT_MS = 15 * 60_000;

const STATUS = {
  signed_out: 401,
  code_unknown: 404,
  code_expired: 401,
  name_missing: 422,
  too_many: 429,
  forbidden: 403,
  unknown_match: 404,
  bad_shape: 400,
  unavailable: 503,
} as const satisfies Record<CourtsideRefusalCode, number>;

const NO_STORE = { "cache-control": "no-store" };

const refuse = (code: CourtsideRefusalCode): Response => {
  const body: CourtsideRefused = { ok: false, code, ...(code === "too_many" ? { afterMs: WAIT_MS } : {}) };
  return Response.json(body, { status: STATUS[code], headers: NO_STORE });
};

const sourceOf = ({ days, entries }: Services): CourtsideSource => ({
  dayBoard: days.dayBoard,
  dayMatches: days.dayMatches,
  matchCard: days.matchCard,
  head: async (ref) => {
    const head = await entries.head(ref);
    return head.ok ? head.value : undefined;
  },
});

const guarded =
  (answer: (request: Request, all: Services) => Promise<Response>) =>
  async (request: Request): Promise<Response> => {
    try {
      return await answer(request, services());
    } catch (error) {
      log.error({ err: error }, "courtside could not be answered");
      return refuse("unavailable");
    }
  };

const read = async (all: Services, cookieHeader: string | undefined, matchId: string | null) => {
  const answer = await answerCourtside(all.auth, sourceOf(all), { cookieHeader, matchId });
  return answer.ok ? Response.json(answer.value, { headers: NO_STORE }) : refuse(answer.error);
};

/** The court and matches of whoever is in on this phone. */
export const GET = guarded((request, all) =>
  read(all, request.headers.get("cookie") ?? undefined, new URL(request.url).searchParams.get("match")),
);

const isJson = (request: Request): boolean =>
  request.headers.get("content-type")?.toLowerCase().startsWith("application/json") ?? false;

/** Lets a phone in with a court code. A wall's code opens no pad: its session ends again at once. */
export const POST = guarded(async (request, all) => {
  if (!isOwnOrigin(request)) return refuse("forbidden");
  const text = isJson(request) ? await readBody(request, MOST_BYTES) : undefined;
  const enter = text?.ok ? parseEnter(text.value) : undefined;
  if (enter === undefined) return refuse("bad_shape");
  const entered = await all.auth.enterWithCode({ ...enter, address: addressOf(request.headers) });
  if (!entered.ok) return refuse(codeTrouble(entered.error));
  const { principal, setCookie } = entered.value;
  if (principal.kind === "wall") {
    await all.auth.revokeCourtside(principal.academyId, principal.sessionId);
    return refuse("code_unknown");
  }
  const cookie = `${setCookie.name}=${encodeURIComponent(setCookie.value)}`;
  const response = await read(all, cookie, null);
  response.headers.append("set-cookie", setCookie.header);
  return response;
});

/** Ends this phone's session; what it has charted stays on it until it is sent. */
export const DELETE = guarded(async (request, { auth }) => {
  if (!isOwnOrigin(request)) return refuse("forbidden");
  const { setCookie } = await auth.leaveCourtside(request.headers.get("cookie") ?? undefined);
  return new Response(null, { status: 204, headers: { ...NO_STORE, "set-cookie": setCookie.header } });
});
