import type { Speaks } from "../look-ups.ts";

/**
 * What a handshake's own words ask for: exactly `{ as: "courtside" }` lets the court's code speak before an
 * account; anything else, whatever it is, leaves the account first. It can only choose among the sessions
 * whose cookies came along. SPEC LV31.
 */
export const speaksOf = (words: unknown): Speaks => {
  if (typeof words !== "object" || words === null) return "account";
  const [only, ...more] = Object.entries(words);
  return only?.[0] === "as" && only[1] === "courtside" && more.length === 0 ? "courtside" : "account";
};
