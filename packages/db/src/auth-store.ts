import { createAuthCodes } from "./auth-store-codes.ts";
import { createAuthCourtside } from "./auth-store-courtside.ts";
import { createAuthHandOvers } from "./auth-store-hand-overs.ts";
import { createAuthMembers } from "./auth-store-members.ts";
import { createAuthTries } from "./auth-store-tries.ts";
import type { Db } from "./open-db.ts";

/**
 * Members, codes, courtside sessions, hand-overs and tries for whoever signs people in. What comes before the academy is
 * known goes through the look-up functions; the rest is held to its academy. Rules AU9 to AU16 and AU21 to AU25.
 */
export const createAuthStore = (db: Db) => ({
  ...createAuthMembers(db),
  ...createAuthCodes(db),
  ...createAuthCourtside(db),
  ...createAuthHandOvers(db),
  ...createAuthTries(db),
});
