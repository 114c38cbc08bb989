import { randomInt } from "node:crypto";

/** No look-alikes: neither 0 and O nor 1, I and L. */
export const CODE_ALPHABET = "23456789ABCDEFGHJKMNPQRSTUVWXYZ";
export const CODE_LENGTH = 6;

const FORM = new RegExp(`^[${CODE_ALPHABET}]{${CODE_LENGTH}}$`);

/** A code drawn evenly from 31^6 (29.7 bits). */
export const drawCode = (): string =>
  Array.from({ length: CODE_LENGTH }, () => CODE_ALPHABET[randomInt(CODE_ALPHABET.length)]).join("");

/** What somebody typed, as it would be kept: any case, with spaces or dashes; undefined when it cannot be a code. */
export const parseCode = (raw: string): string | undefined => {
  const code = raw.toUpperCase().replace(/[\s-]/g, "");
  return FORM.test(code) ? code : undefined;
};
