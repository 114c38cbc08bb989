import { err, ok, type Result } from "@courtloom/core";
import { COMMON_PASSWORDS } from "./common-passwords.ts";

export const SHORTEST_PASSWORD = 8;
/** What the form advises. */
export const ADVISED_PASSWORD = 15;
export const LONGEST_PASSWORD = 128;

const FEWEST_DIFFERENT = 4;

const isRun = (text: string): boolean => {
  const codes = [...text].map((char) => char.codePointAt(0) ?? 0);
  const steps = new Set(codes.slice(1).map((code, at) => code - (codes[at] ?? 0)));
  return steps.size === 1 || isDigitRun(text);
};

/** 1234567890123…: the zero after nine breaks the step but not the habit. */
const isDigitRun = (text: string): boolean =>
  "01234567890123456789012345678901234567890123456789".includes(text) ||
  "98765432109876543210987654321098765432109876543210".includes(text);

const isCommon = (password: string, own: readonly string[]): boolean => {
  const plain = password.toLowerCase();
  const stem = plain.replace(/^[^\p{L}]+|[^\p{L}]+$/gu, "");
  return (
    [plain, stem].some((form) => COMMON_PASSWORDS.has(form)) ||
    own.some((word) => word !== "" && [plain, stem].includes(word.toLowerCase())) ||
    new Set(plain).size < FEWEST_DIFFERENT ||
    isRun(plain)
  );
};

/**
 * Judges a new password without asking anybody outside. No rules on its composition; too short, too long and
 * what everybody tries first are refused. `own`: the person's e-mail, its first part, their name.
 */
export const checkPassword = (
  password: string,
  own: readonly string[],
): Result<undefined, "password_too_short" | "password_too_long" | "password_too_common"> => {
  const length = [...password.normalize("NFKC")].length;
  if (length < SHORTEST_PASSWORD) return err("password_too_short");
  if (length > LONGEST_PASSWORD || password.length > LONGEST_PASSWORD) return err("password_too_long");
  return isCommon(password, own) ? err("password_too_common") : ok(undefined);
};
