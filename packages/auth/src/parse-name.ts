const LONGEST_NAME = 40;
/** Control characters, and signs that turn or hide the text around them. */
const UNWELCOME = /[\p{Cc}\p{Cs}\p{Co}\p{Cn}\u200B\u200E\u200F\u202A-\u202E\u2028\u2029\u2060-\u2069\uFEFF]/u;

/** A person's display name: 1 to 40 characters, trimmed, inner space single; undefined when it cannot be shown. */
export const parseName = (raw: string): string | undefined => {
  if (UNWELCOME.test(raw)) return undefined;
  const name = raw.normalize("NFC").trim().replace(/\s+/gu, " ");
  const length = [...name].length;
  return length >= 1 && length <= LONGEST_NAME ? name : undefined;
};
