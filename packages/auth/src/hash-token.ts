import { createHash, randomBytes } from "node:crypto";

/** SHA-256 in hex: how a session token is kept. A token is long and random, so no key and no salt are needed. */
export const hashToken = (token: string): string => createHash("sha256").update(token).digest("hex");

/** A session token of 256 random bits, 43 URL-safe characters. */
export const makeToken = (): string => randomBytes(32).toString("base64url");
