import { describe, expect, it } from "vitest";
import { shotsOf } from "./court-shots.ts";
import { courtTrial } from "./court-trial.ts";
import { shotWords } from "./shot-words.ts";

const names = { A: "Noor V.", B: "Elsbeth K." };

describe("shots in words", () => {
  it("[BD12] says kind, direction and result, and leaves out what nobody said", () => {
    const [first, second, third] = shotsOf(courtTrial().view).map((shot) => shotWords(names, shot));
    expect(first).toBe("Noor V.: groundstroke cross-court, in play");
    expect(second).toBe("Elsbeth K.: groundstroke cross-court");
    expect(third).toBe("Noor V.: groundstroke down the line, missed, wide");
  });
});
