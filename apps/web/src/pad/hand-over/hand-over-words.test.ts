import { describe, expect, it } from "vitest";
import {
  type HandOverFacts,
  handOverStep,
  leftWords,
  noCodeWords,
  stepWords,
  unsentWords,
} from "./hand-over-words.ts";

const step = (over: Partial<HandOverFacts>) =>
  handOverStep({ signal: "open", unsent: 0, drafting: false, hurried: false, ...over });

describe("handing over", () => {
  it("[PD55] finishes the point first, since a half-charted one is not carried", () => {
    expect(step({ drafting: true })).toBe("finishPoint");
    expect(step({ drafting: true, signal: "noSignal", unsent: 3 })).toBe("finishPoint");
    expect(stepWords("finishPoint", 0)[0]).toMatch(/^Finish or undo this point first\./);
  });

  it("[PD56] needs signal, and without one says what the other person can do", () => {
    for (const signal of ["noSignal", "connecting", "refused"] as const) {
      expect(step({ signal, hurried: true })).toBe("noSignal");
    }
    expect(stepWords("noSignal", 3).join(" ")).toContain("take over once this phone was not heard for 30 s");
    expect(stepWords("noSignal", 3).at(-1)).toMatch(/^3 unsent: kept here/);
    expect(stepWords("noSignal", 0).at(-1)).toBe("All is sent.");
  });

  it("[PD57] sends what is unsent first, unless its person does not want to wait", () => {
    expect(step({ unsent: 3 })).toBe("sending");
    expect(stepWords("sending", 3)[0]).toBe("3 unsent. They are sent first, then the code comes by itself.");
    expect(step({ unsent: 3, hurried: true })).toBe("ready");
    expect(step({})).toBe("ready");
    expect(unsentWords(3)).toBe("3 unsent: they follow by themselves.");
    expect(unsentWords(0)).toBe("All sent.");
  });

  it("[PD58] says how long a code holds, and why there is none", () => {
    expect(leftWords(600_000)).toBe("10 min left");
    expect(leftWords(60_001)).toBe("2 min left");
    expect(leftWords(60_000)).toBe("60 s left");
    expect(leftWords(1)).toBe("1 s left");
    expect(noCodeWords("not_lead")).toContain("does not lead");
    for (const code of [
      "no_court",
      "day_over",
      "code_expired",
      "too_many",
      "forbidden",
      "unavailable",
      "bad_shape",
    ] as const) {
      expect(noCodeWords(code), code).toMatch(/\.$/);
    }
  });
});
