import type { HandOverRefusalCode, HandOverRefused } from "../pad/hand-over/hand-over-wire.ts";
import { log } from "../server/log.ts";
import { type Services, services } from "../server/services.ts";
import type { CourtsideSource } from "./list-matches.ts";

/** More than any body of the pad, far less than what could hurt. */
export const MOST_BYTES = 2048;
const WAIT_MS = 15 * 60_000;

const STATUS = {
  signed_out: 401,
  code_unknown: 404,
  code_expired: 401,
  code_used: 409,
  code_lapsed: 410,
  name_missing: 422,
  too_many: 429,
  forbidden: 403,
  unknown_match: 404,
  not_lead: 409,
  no_court: 409,
  day_over: 409,
  bad_shape: 400,
  unavailable: 503,
} as const satisfies Record<HandOverRefusalCode, number>;

export const NO_STORE = { "cache-control": "no-store" };

export const refuse = (code: HandOverRefusalCode): Response => {
  const body: HandOverRefused & { readonly afterMs?: number } = {
    ok: false,
    code,
    ...(code === "too_many" ? { afterMs: WAIT_MS } : {}),
  };
  return Response.json(body, { status: STATUS[code], headers: NO_STORE });
};

export const sourceOf = ({ days, entries }: Services): CourtsideSource => ({
  dayBoard: days.dayBoard,
  dayMatches: days.dayMatches,
  matchCard: days.matchCard,
  head: async (ref) => {
    const head = await entries.head(ref);
    return head.ok ? head.value : undefined;
  },
});

export const isJson = (request: Request): boolean =>
  request.headers.get("content-type")?.toLowerCase().startsWith("application/json") ?? false;

/** A fault says nothing of itself: the phone hears that the server could not answer. */
export const guarded =
  (answer: (request: Request, all: Services) => Promise<Response>) =>
  async (request: Request): Promise<Response> => {
    try {
      return await answer(request, services());
    } catch (error) {
      log.error({ err: error }, "courtside could not be answered");
      return refuse("unavailable");
    }
  };
