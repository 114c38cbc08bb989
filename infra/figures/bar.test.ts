import { describe, expect, it } from "vitest";
import { atMost, barLine, within } from "./bar.ts";
import { clusteredMean } from "./clustered-mean.ts";
import { agrees } from "./operating/agrees.ts";

describe("bars of the figures", () => {
  it("[OP2] a rate is missed when it is above its bar by more than 1.96 standard errors", () => {
    expect(atMost("false alarms", { mean: 0.0538, se: 0.002 }, 0.05).kept).toBe(true);
    expect(atMost("false alarms", { mean: 0.054, se: 0.002 }, 0.05).kept).toBe(false);
    expect(atMost("false alarms", { mean: Number.NaN, se: 0.002 }, 0.05).kept).toBe(false);
    expect(barLine(atMost("false alarms", { mean: 0.054, se: 0.002 }, 0.05))).toBe(
      "MISSED false alarms: 5.40 %, at most 5.0 % (± 0.39)",
    );
  });

  it("[OP2] counts each player once, however alike the player's matches are", () => {
    expect(clusteredMean([0, 0, 0.2, 0.2])).toEqual({ mean: 0.1, se: Math.sqrt(0.04 / 3 / 4) });
    expect(clusteredMean([0.3]).se).toBeNaN();
  });

  it("[OP3] what is found may be three points from the reference either way, and not a tenth more", () => {
    expect(within("found", 0.289, 0.26, 3).kept).toBe(true);
    expect(within("found", 0.291, 0.26, 3).kept).toBe(false);
    expect(within("found", 0.229, 0.26, 3).kept).toBe(false);
    expect(within("found", Number.NaN, 0.26, 3).kept).toBe(false);
    expect(barLine(within("found", 0.247, 0.26, 3))).toBe(
      "KEPT   found: 24.7 %, within 3 points of 26.0 % (−1.3)",
    );
  });

  it("[OP4] matches and recursion may be three standard errors apart", () => {
    expect(agrees("five", 0.052, 0.05, 0.001).kept).toBe(true);
    expect(agrees("five", 0.0531, 0.05, 0.001).kept).toBe(false);
    expect(agrees("five", 0.0469, 0.05, 0.001).kept).toBe(false);
  });
});
