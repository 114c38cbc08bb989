import { hkdfSync } from "node:crypto";

const SHORTEST_SECRET = 32;

/** What the secret is used for; one key each, so that none can stand in for another. */
export type KeyUse = "code hash" | "code seal" | "try key";

/** A key of 32 bytes made from the secret for one use. Throws when the secret is too short to be one. */
export const deriveKey = (secret: string, use: KeyUse): Buffer => {
  if (secret.length < SHORTEST_SECRET) {
    throw new Error(`The secret must have at least ${SHORTEST_SECRET} characters; make a new one at random.`);
  }
  return Buffer.from(hkdfSync("sha256", secret, "courtloom", use, 32));
};
