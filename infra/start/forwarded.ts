import type { IncomingHttpHeaders } from "node:http";
import { isIP } from "node:net";
import { type IsTrusted, plainAddress, trustsNobody } from "./trusted-proxies.ts";

/** Headers by which something in front tells who the visitor is; from outside they can be made up. */
const CLAIMED = /^(x-forwarded-.*|forwarded|x-real-ip|x-client-ip|true-client-ip|cf-connecting-ip)$/;
/** A host as browsers write it: name or address, and port. */
const HOST = /^[A-Za-z0-9.-]+(:\d{1,5})?$|^\[[0-9a-f:.]+\](:\d{1,5})?$/i;

export interface Visitor {
  readonly address: string | undefined;
  readonly encrypted: boolean;
}

interface Known {
  readonly address: string;
  readonly protocol: "http" | "https";
  readonly host: string | undefined;
}

/** A header's values in order, also where it was sent several times. */
const valuesOf = (header: string | string[] | undefined): string[] =>
  (Array.isArray(header) ? header.join(",") : (header ?? ""))
    .split(",")
    .map((value) => value.trim())
    .filter((value) => value !== "");

/** From our side outwards: the first address that is no trusted proxy's, or the outermost that is an address. */
function visitorBehind(chain: readonly string[], peer: string, isTrusted: IsTrusted): string {
  let address = peer;
  for (const claimed of chain.toReversed()) {
    const next = plainAddress(claimed);
    if (isIP(next) === 0) return address;
    address = next;
    if (!isTrusted(next)) return address;
  }
  return address;
}

/** What a trusted proxy says; of several values the last is its own, earlier ones may be the visitor's. */
function believe(headers: IncomingHttpHeaders, known: Known, isTrusted: IsTrusted): Known {
  const protocol = valuesOf(headers["x-forwarded-proto"]).at(-1)?.toLowerCase();
  const host = valuesOf(headers["x-forwarded-host"]).at(-1);
  return {
    address: visitorBehind(valuesOf(headers["x-forwarded-for"]), known.address, isTrusted),
    protocol: protocol === "https" || protocol === "http" ? protocol : known.protocol,
    host: host !== undefined && HOST.test(host) ? host : known.host,
  };
}

/**
 * Replaces, in place, what a visitor claims about itself by what the front door knows: from the connection, or
 * from a trusted proxy. The host that people see becomes the request's own.
 */
export function setForwarded(
  headers: IncomingHttpHeaders,
  visitor: Visitor,
  isTrusted: IsTrusted = trustsNobody,
): void {
  const direct: Known = {
    address: plainAddress(visitor.address ?? ""),
    protocol: visitor.encrypted ? "https" : "http",
    host: headers.host,
  };
  const known = isTrusted(direct.address) ? believe(headers, direct, isTrusted) : direct;
  for (const name of Object.keys(headers)) {
    if (CLAIMED.test(name)) delete headers[name];
  }
  headers["x-forwarded-for"] = known.address;
  headers["x-forwarded-proto"] = known.protocol;
  if (known.host === undefined) return;
  headers.host = known.host;
  headers["x-forwarded-host"] = known.host;
}
