/** Two halves with a space, for reading out: "ABC 234". */
export const spacedCode = (code: string): string => `${code.slice(0, 3)} ${code.slice(3)}`;

/** The pad with its code in the fragment, which no server, log or referrer ever sees. Rule WB3. */
export const padLink = (publicUrl: string, code: string): string =>
  `${publicUrl.replace(/\/+$/, "")}/pad#code=${encodeURIComponent(code)}`;
