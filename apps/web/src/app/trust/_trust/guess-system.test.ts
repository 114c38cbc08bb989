import { describe, expect, it } from "vitest";
import { guessSystem } from "./guess-system.ts";
import { SYSTEMS } from "./systems.ts";

describe("steps of trust", () => {
  it.each([
    ["Mozilla/5.0 (iPhone; CPU iPhone OS 19_0 like Mac OS X)", "apple-phone"],
    ["Mozilla/5.0 (Linux; Android 16; Pixel)", "android"],
    ["Mozilla/5.0 (Windows NT 10.0; Win64; x64)", "windows"],
    ["Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7)", "mac"],
    ["Mozilla/5.0 (X11; Linux x86_64; rv:140.0)", "linux"],
    ["curl/8", undefined],
    [null, undefined],
  ])("[WB11] opens those of %s", (userAgent, id) => expect(guessSystem(userAgent)).toBe(id));

  it("[WB11] are there for each kind of device, with the way back", () => {
    for (const { id, steps, forget } of SYSTEMS) {
      expect([id, steps.length > 1, forget.includes("{name}")]).toEqual([id, true, true]);
    }
    expect(new Set(SYSTEMS.map(({ id }) => id)).size).toBe(SYSTEMS.length);
  });
});
