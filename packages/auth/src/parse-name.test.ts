import { describe, expect, it } from "vitest";
import { parseName } from "./parse-name.ts";

describe("a display name", () => {
  it.each([
    ["  Wren  ", "Wren"],
    ["Wren\u00a0 Tide", "Wren Tide"],
    ["x".repeat(40), "x".repeat(40)],
    ["🎾".repeat(40), "🎾".repeat(40)],
    ["Zoe\u0308", "Zo\u00eb"],
    ["नीला", "नीला"],
    ["<b>Wren</b>", "<b>Wren</b>"],
  ])("[AU11] %j is shown as %j", (raw, name) => expect(parseName(raw)).toBe(name));

  it.each(["", "   ", "x".repeat(41), "a\nb", "a\u0000", "a\u007f", "\u202eWren", "Wr\u200ben", "\ud800"])(
    "[AU11] %j is refused",
    (raw) => expect(parseName(raw)).toBeUndefined(),
  );
});
