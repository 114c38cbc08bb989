import type { IncomingHttpHeaders } from "node:http";

/** Headers by which something in front tells who the visitor is; from outside they can be made up. */
const CLAIMED = /^(x-forwarded-.*|forwarded|x-real-ip|x-client-ip|true-client-ip|cf-connecting-ip)$/;

export interface Visitor {
  readonly address: string | undefined;
  readonly encrypted: boolean;
}

/** Replaces, in place, what a visitor claims about itself by what the front door knows. */
export function setForwarded(headers: IncomingHttpHeaders, visitor: Visitor): void {
  for (const name of Object.keys(headers)) {
    if (CLAIMED.test(name)) delete headers[name];
  }
  headers["x-forwarded-for"] = (visitor.address ?? "").replace(/^::ffff:/, "");
  headers["x-forwarded-proto"] = visitor.encrypted ? "https" : "http";
  if (headers.host !== undefined) headers["x-forwarded-host"] = headers.host;
}
