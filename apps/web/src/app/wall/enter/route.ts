import { isOwnOrigin, readBody } from "@courtloom/api";
import { addressOf } from "../../../server/address-of.ts";
import { log } from "../../../server/log.ts";
import { services } from "../../../server/services.ts";
import { enterWall, type WallAnswer } from "../_wall/enter-wall.ts";

export const dynamic = "force-dynamic";

const MOST_BYTES = 1024;

/** Goes on by the address within this site, so that it holds whatever host the screen came by. */
const goTo = ({ location, setCookie }: WallAnswer): Response => {
  const headers = new Headers({ location, "cache-control": "no-store" });
  if (setCookie) headers.append("set-cookie", setCookie.header);
  return new Response(null, { status: 303, headers });
};

/** Takes the form of `/wall`: a wall code in, the day's wall out. */
export const POST = async (request: Request): Promise<Response> => {
  if (!isOwnOrigin(request)) return goTo({ location: "/wall?problem=other_site" });
  const body = await readBody(request, MOST_BYTES);
  const code = body.ok ? (new URLSearchParams(body.value).get("code") ?? "") : "";
  try {
    return goTo(await enterWall(services().auth, { code, address: addressOf(request.headers) }));
  } catch (error) {
    log.error({ err: error }, "a wall code could not be checked");
    return goTo({ location: "/wall?problem=unavailable" });
  }
};
