import { createHash, createHmac, pbkdf2Sync } from "node:crypto";

const ITERATIONS = 4096;

/** The password of a role, derived from the installation's secret, so that all nodes agree without storing it. */
export function rolePassword(secret: string, role: string): string {
  return createHmac("sha256", secret).update(`courtloom database role ${role}`).digest("base64url");
}

/**
 * What the server keeps instead of the password (RFC 5803), so that the password itself is never sent
 * and cannot land in the server's log. The salt is derived too: the same secret gives the same text.
 */
export function scramVerifier(secret: string, role: string): string {
  const salt = createHmac("sha256", secret).update(`courtloom salt ${role}`).digest().subarray(0, 16);
  const salted = pbkdf2Sync(rolePassword(secret, role), salt, ITERATIONS, 32, "sha256");
  const hmac = (text: string): Buffer => createHmac("sha256", salted).update(text).digest();
  const stored = createHash("sha256").update(hmac("Client Key")).digest("base64");
  return `SCRAM-SHA-256$${ITERATIONS}:${salt.toString("base64")}$${stored}:${hmac("Server Key").toString("base64")}`;
}
