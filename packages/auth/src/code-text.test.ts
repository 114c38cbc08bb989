import { describe, expect, it } from "vitest";
import { CODE_ALPHABET, drawCode, parseCode } from "./code-text.ts";

describe("a code", () => {
  it("[AU11] has six characters that nobody takes for one another: about 30 bits", () => {
    expect(new Set(CODE_ALPHABET).size).toBe(CODE_ALPHABET.length);
    for (const lookAlike of "01OIL") expect(CODE_ALPHABET).not.toContain(lookAlike);
    expect(6 * Math.log2(CODE_ALPHABET.length)).toBeGreaterThan(29.7);
  });

  it("[AU11] is drawn evenly", () => {
    const counts = new Map<string, number>();
    for (let at = 0; at < 5_000; at += 1) {
      const code = drawCode();
      expect(parseCode(code)).toBe(code);
      for (const char of code) counts.set(char, (counts.get(char) ?? 0) + 1);
    }
    const expected = 30_000 / CODE_ALPHABET.length;
    expect(counts.size).toBe(CODE_ALPHABET.length);
    // Seven standard deviations: a fair draw leaves this range once in ten thousand million runs.
    for (const count of counts.values())
      expect(Math.abs(count - expected)).toBeLessThan(7 * Math.sqrt(expected));
  });

  it("[AU11] may be typed in any case, with spaces and dashes", () => {
    expect(parseCode(" ab-2 cd\t3 ")).toBe("AB2CD3");
    for (const raw of ["ABCDE", "ABCDEFG", "ABCDE0", "ABCDEÉ", ""]) expect(parseCode(raw)).toBeUndefined();
  });
});
