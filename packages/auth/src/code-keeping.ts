import { createCipheriv, createDecipheriv, createHmac, randomBytes } from "node:crypto";
import { deriveKey } from "./derive-key.ts";

const NONCE_BYTES = 12;
const TAG_BYTES = 16;

/**
 * How a code is kept: a keyed hash to find it by (a plain one of 30 bits would be searched through in
 * seconds) and sealed with AES-256-GCM to be read out again. The seal is bound to the code's id.
 */
export const makeCodeKeeping = (secret: string) => {
  const hashKey = deriveKey(secret, "code hash");
  const sealKey = deriveKey(secret, "code seal");
  return {
    hash: (code: string): string => createHmac("sha256", hashKey).update(code).digest("hex"),

    seal: (code: string, codeId: string): string => {
      const nonce = randomBytes(NONCE_BYTES);
      const cipher = createCipheriv("aes-256-gcm", sealKey, nonce).setAAD(Buffer.from(codeId));
      const body = Buffer.concat([cipher.update(code, "utf8"), cipher.final()]);
      return Buffer.concat([nonce, cipher.getAuthTag(), body]).toString("base64url");
    },

    /** Undefined when it was sealed with another secret or for another code. */
    unseal: (sealed: string, codeId: string): string | undefined => {
      const bytes = Buffer.from(sealed, "base64url");
      if (bytes.length <= NONCE_BYTES + TAG_BYTES) return undefined;
      const decipher = createDecipheriv("aes-256-gcm", sealKey, bytes.subarray(0, NONCE_BYTES))
        .setAAD(Buffer.from(codeId))
        .setAuthTag(bytes.subarray(NONCE_BYTES, NONCE_BYTES + TAG_BYTES));
      const body = decipher.update(bytes.subarray(NONCE_BYTES + TAG_BYTES));
      try {
        return Buffer.concat([body, decipher.final()]).toString("utf8");
      } catch {
        return undefined; // The one thing final() reports: the seal does not fit.
      }
    },
  };
};

export type CodeKeeping = ReturnType<typeof makeCodeKeeping>;
