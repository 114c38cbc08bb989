import { type NextRequest, NextResponse } from "next/server";
import { isDevelopment } from "./env.ts";
import { contentPolicy } from "./server/content-policy.ts";

const ONE_YEAR_S = 31_536_000;

const makeNonce = (): string => Buffer.from(crypto.getRandomValues(new Uint8Array(16))).toString("base64");

/** Gives every page its policy, with a nonce that the page's own scripts carry. Authority is never decided here. */
export const proxy = (request: NextRequest): NextResponse => {
  const policy = contentPolicy({
    nonce: makeNonce(),
    host: request.headers.get("host") ?? "",
    development: isDevelopment(),
  });
  const headers = new Headers(request.headers);
  headers.set("Content-Security-Policy", policy);
  const response = NextResponse.next({ request: { headers } });
  response.headers.set("Content-Security-Policy", policy);
  if (request.headers.get("x-forwarded-proto") === "https") {
    response.headers.set("Strict-Transport-Security", `max-age=${ONE_YEAR_S}; includeSubDomains`);
  }
  return response;
};

/** Everything but built files, whose policy is in the configuration. */
export const config = { matcher: ["/((?!_next/static/).*)"] };
