import { isOwnOrigin, readBody } from "@courtloom/api";
import {
  type HandOverMeans,
  makeHandOver,
  withdrawHandOver,
} from "../../../../courtside/hand-over/answer-hand-over.ts";
import { parseHandOverAsk, parseHandOverLane } from "../../../../courtside/hand-over/parse-hand-over.ts";
import { guarded, isJson, MOST_BYTES, NO_STORE, refuse, sourceOf } from "../../../../courtside/respond.ts";
import type { Services } from "../../../../server/services.ts";

export const dynamic = "force-dynamic";

const meansOf = (all: Services): HandOverMeans => ({
  auth: all.auth,
  source: sourceOf(all),
  writeAudit: all.days.writeAudit,
  wallMs: all.clock.wallMs,
});

const bodyOf = async <T>(
  request: Request,
  parse: (text: string) => T | undefined,
): Promise<T | undefined> => {
  const text = isJson(request) ? await readBody(request, MOST_BYTES) : undefined;
  return text?.ok ? parse(text.value) : undefined;
};

const cookiesOf = (request: Request): string | undefined => request.headers.get("cookie") ?? undefined;

/** A one-use code by which the phone that leads hands the match over. */
export const POST = guarded(async (request, all) => {
  if (!isOwnOrigin(request)) return refuse("forbidden");
  const ask = await bodyOf(request, parseHandOverAsk);
  if (!ask) return refuse("bad_shape");
  const made = await makeHandOver(meansOf(all), cookiesOf(request), ask);
  return made.ok ? Response.json(made.value, { headers: NO_STORE }) : refuse(made.error);
});

/** Withdraws it. */
export const DELETE = guarded(async (request, all) => {
  if (!isOwnOrigin(request)) return refuse("forbidden");
  const lane = await bodyOf(request, parseHandOverLane);
  if (!lane) return refuse("bad_shape");
  const withdrawn = await withdrawHandOver(meansOf(all), cookiesOf(request), lane);
  return withdrawn.ok ? new Response(null, { status: 204, headers: NO_STORE }) : refuse(withdrawn.error);
});
