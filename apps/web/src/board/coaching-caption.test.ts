import { describe, expect, it } from "vitest";
import { coachingCaption, shortCaption } from "./coaching-caption.ts";

describe("coaching caption", () => {
  it("[BD7] is silent where coaching is allowed", () => {
    expect(coachingCaption({ coachingMode: "practice", bothOwn: false })).toBeNull();
    expect(coachingCaption({ coachingMode: "permitted", bothOwn: false })).toBeNull();
  });

  it("[BD7] keeps figures from the player where it is not, or is not known", () => {
    expect(coachingCaption({ coachingMode: "notKnown", bothOwn: false })).toBe(
      "Coaching not known: keep figures from the player",
    );
    expect(coachingCaption({ coachingMode: "notPermitted", bothOwn: false })).toBe(
      "Coaching not permitted: keep figures from the player",
    );
  });

  it("[BD7] speaks to neither of two own players, whatever the mode", () => {
    for (const coachingMode of ["practice", "permitted", "notPermitted", "notKnown"] as const) {
      expect(coachingCaption({ coachingMode, bothOwn: true })).toMatch(/^Both ours: speak to neither/);
    }
  });

  it("[BD7] says it in four words where there is little room", () => {
    expect(shortCaption({ coachingMode: "notKnown", bothOwn: false })).toBe("keep figures from player");
    expect(shortCaption({ coachingMode: "practice", bothOwn: true })).toBe("Both ours: speak to neither");
  });
});
