import { describe, expect, it } from "vitest";
import { speaksOf } from "./speaks-of.ts";

describe("a handshake's own words", () => {
  it("[LV31] let the court's code speak for exactly one sentence, and the account otherwise", () => {
    expect(speaksOf({ as: "courtside" })).toBe("courtside");
    const others = [
      undefined,
      null,
      "courtside",
      7,
      [],
      ["courtside"],
      {},
      { as: "account" },
      { as: "Courtside" },
      { as: ["courtside"] },
      { as: "courtside", more: 1 },
      { more: 1, as: "courtside" },
      Object.create({ as: "courtside" }),
    ];
    for (const words of others) expect([words, speaksOf(words)]).toEqual([words, "account"]);
  });
});
