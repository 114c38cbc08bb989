import { describe, expect, it } from "vitest";
import { parseArguments } from "./arguments.ts";

const refusal = (...args: string[]): string => {
  const asked = parseArguments(args);
  return asked.ok ? JSON.stringify(asked.value) : asked.error;
};

describe("what is asked of the figures", () => {
  it("[OP9] is told what there is without a word, and has defaults", () => {
    expect(parseArguments([])).toEqual({ ok: true, value: { kind: "help" } });
    expect(parseArguments(["--operating"])).toEqual({
      ok: true,
      value: { kind: "operating", seed: 1, matches: 20_000 },
    });
    expect(parseArguments(["--recovery", "--academies", "7", "--seed", "3"])).toEqual({
      ok: true,
      value: { kind: "recovery", seed: 3, academies: 7 },
    });
  });

  it.each([
    [["--operating", "--recovery"], "One at a time"],
    [["--matches", "5000"], "--matches goes with --operating"],
    [["--operating", "--academies", "4"], "--academies goes with --recovery"],
    [["--operating", "--matches", "99"], "At least 100 matches"],
    [["--operating", "--matches", "many"], "At least 100 matches"],
    [["--recovery", "--academies", "0"], "At least one academy"],
    [["--recovery", "--seed", "1.5"], "A seed is a whole number"],
    [["--operatin"], "--operatin"],
  ])("[OP9] refuses %j with a sentence that says what to write", (args, words) => {
    expect(refusal(...args)).toContain(words);
    expect(refusal(...args)).toContain("Use --operating [--matches 20000] [--seed 1]");
  });
});
