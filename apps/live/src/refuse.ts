import type { Refusal, RefusalCode } from "@courtloom/protocol";

const RETRY: ReadonlySet<RefusalCode> = new Set(["busy", "unavailable", "unknown_lane", "lead_taken"]);

/** The answer to a message that was not taken; whether it may be tried again follows from the code. */
export const refuse = (code: RefusalCode, afterMs?: number): Refusal => ({
  ok: false,
  code,
  retry: RETRY.has(code),
  ...(afterMs === undefined ? {} : { afterMs }),
});
