import type { BehindBall, LineCell } from "@courtloom/api";
import { describe, expect, it } from "vitest";
import { ballWords, wonWords } from "./ball-words.ts";
import { bothCounts, contradictionWords, findingWords, planWords, spotWords } from "./map-words.ts";
import { turnedScore } from "./turned-score.ts";

const cell = (line: number, kept: number, over: Partial<LineCell> = {}): LineCell => ({
  verdict: "cantTell",
  worth: { value: 0.01, low: -0.1, high: 0.12, distinguishable: false },
  line: { x: 0, n: line },
  kept: { x: 0, n: kept },
  cross: { x: 0, n: kept },
  middle: { x: 0, n: 0 },
  ...over,
});

describe("words of the line map", () => {
  it("[PF13] both counts, and why it cannot be told", () => {
    expect(bothCounts(cell(31, 160))).toBe("31 line, 160 kept");
    expect(findingWords(cell(0, 0, { worth: null }))).toContain("No ball");
    expect(findingWords(cell(3, 66))).toBe("Too few to say: 3 line balls, 66 kept balls.");
    expect(findingWords(cell(18, 66))).toBe(
      "The difference is not distinguishable from none: 18 line balls, 66 kept balls.",
    );
    const pays = cell(40, 50, {
      verdict: "pays",
      worth: { value: 0.2, low: 0.1, high: 0.3, distinguishable: true },
    });
    expect(findingWords(pays)).toBe("About 2 points more in every 10 balls, likely between 1 and 3.");
    expect(spotWords({ depth: "insideServiceLine", side: "right" })).toBe(
      "Inside the service line, right side",
    );
  });

  it("[PF14] where the plan says otherwise it is said, without a cause", () => {
    expect(contradictionWords({ contradicts: "keepButLinePays" })).toBe(
      "The plan says keep. The line goes with more points here: it may not be the cause.",
    );
    expect(contradictionWords({ contradicts: "lineButKeptPays" })).toContain("it may not be the cause");
    expect(contradictionWords({ contradicts: null })).toBe("");
    expect(planWords(null)).toBe("The plan says nothing of it.");
  });
});

describe("words of the points behind a figure", () => {
  it("[PF8] a ball is its place, what was answered, the choice and what became of it", () => {
    const ball: BehindBall = {
      kind: "groundstroke",
      depth: "behindBaseline",
      side: "left",
      choice: "line",
      missed: true,
      result: null,
      ballHeight: "sitsUp",
      ballTime: null,
      opponent: null,
      verdict: "onPlan",
    };
    expect(ballWords(ball)).toBe(
      "Groundstroke behind the baseline, from the left, the ball sits up: down the line, missed",
    );
    expect(ballWords({ ...ball, choice: null, missed: false, ballHeight: null, result: "weak" })).toBe(
      "Groundstroke behind the baseline, from the left: direction not charted, weak reply",
    );
    expect([true, false, null].map((won) => wonWords({ won }))).toEqual([
      "won the point",
      "lost the point",
      "",
    ]);
  });

  it("[PF11] a score is told from the player's side", () => {
    expect(turnedScore("6-4 6-7(5) [10-8]")).toBe("4-6 7-6(5) [8-10]");
    expect(turnedScore("3-2 40-ad")).toBe("2-3 ad-40");
    expect(turnedScore("")).toBe("");
  });
});
