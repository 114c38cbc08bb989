import type { IncomingMessage } from "node:http";
import type { PrincipalOf } from "../look-ups.ts";
import type { Log } from "../runtime.ts";
import { addressOf } from "./address-of.ts";
import type { FailureLimit } from "./failure-limit.ts";
import { isOwnOrigin } from "./is-own-origin.ts";

export interface AdmitDeps {
  readonly principalOf: PrincipalOf;
  readonly failures: FailureLimit;
  readonly log: Log;
}

/** Whether anybody is behind the request; unknown when it cannot be asked. */
const isKnown = async (cookie: string | undefined, { principalOf, log }: AdmitDeps): Promise<boolean> => {
  if (cookie === undefined) return false;
  try {
    return (await principalOf(cookie, "account")).ok;
  } catch (error) {
    // The phone is let in and told `unavailable`; turning it away would look like a fault of its own.
    log.note("a handshake could not be looked up", { error });
    return true;
  }
};

/**
 * May this handshake go on? Somebody unknown may, so that the reason can be told in a reply; but not
 * without end from one address.
 */
export const admit = async (request: IncomingMessage, deps: AdmitDeps): Promise<boolean> => {
  const { origin, host, cookie } = request.headers;
  const own = isOwnOrigin(origin, host);
  if (own && (await isKnown(cookie, deps))) return true;
  return deps.failures.allowsFailure(addressOf(request)) && own;
};
