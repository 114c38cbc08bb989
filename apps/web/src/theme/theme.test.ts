import { describe, expect, it } from "vitest";
import { parseTheme } from "./theme.ts";

describe("theme", () => {
  it("[WB9] is light, dark, or as the device is set", () => {
    expect(parseTheme("dark")).toBe("dark");
    expect(parseTheme("light")).toBe("light");
    for (const odd of [undefined, "", "sun", 'dark" onload="x', "toString"])
      expect(parseTheme(odd)).toBeUndefined();
  });
});
