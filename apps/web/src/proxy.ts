import { type NextRequest, NextResponse } from "next/server";
import { isDevelopment, publicUrl, readTrustEnv } from "./env.ts";
import { contentPolicy } from "./server/content-policy.ts";
import { httpsOrigin } from "./server/https-origin.ts";
import { strictTransport } from "./server/strict-transport.ts";

const makeNonce = (): string => Buffer.from(crypto.getRandomValues(new Uint8Array(16))).toString("base64");

/** Gives every page its policy, with a nonce that the page's own scripts carry. Authority is never decided here. */
export const proxy = (request: NextRequest): NextResponse => {
  const host = request.headers.get("host") ?? "";
  const trust = readTrustEnv();
  const policy = contentPolicy({
    nonce: makeNonce(),
    host,
    development: isDevelopment(),
    // The page of trust tries https from plain http; no other page does.
    alsoReaches:
      trust && request.nextUrl.pathname === "/trust" ? httpsOrigin(host, trust.httpsPort) : undefined,
  });
  const headers = new Headers(request.headers);
  headers.set("Content-Security-Policy", policy);
  const response = NextResponse.next({ request: { headers } });
  response.headers.set("Content-Security-Policy", policy);
  const strict = strictTransport({
    protocol: request.headers.get("x-forwarded-proto"),
    host,
    publicUrl: publicUrl(),
    hasLocalAuthority: trust !== undefined,
  });
  if (strict) response.headers.set("Strict-Transport-Security", strict);
  return response;
};

/** Everything but built files, whose policy is in the configuration. */
export const config = { matcher: ["/((?!_next/static/).*)"] };
