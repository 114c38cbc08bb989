import { type Because, judgeBall, STARTER_PLAN } from "@courtloom/decisions";
import { describe, expect, it } from "vitest";
import { lineOnSentence, ruleHeading, targetSentence } from "./facet-words.ts";
import { toggleFacet } from "./toggle-facet.ts";
import { ballToJudge, channelTo, placeFrom, placeTo, type TriedBall } from "./tried-ball.ts";
import { understood } from "./verdict-panel.tsx";
import { VERDICT_WORDS, whySentence } from "./verdict-words.ts";

const LINE: TriedBall = { from: placeFrom("behindBaseline", "left"), to: placeTo("left") };
const said = (ball: TriedBall) => {
  const judgement = judgeBall({ rules: STARTER_PLAN }, ballToJudge(ball));
  const rule = STARTER_PLAN.find(({ id }) => id === judgement.ruleId);
  return `${VERDICT_WORDS[judgement.verdict]}: ${whySentence(judgement, rule)}`;
};

describe("a plan in words", () => {
  it("[PL1] has a heading, the line's conditions and the targets of each starter rule", () => {
    expect(STARTER_PLAN.map(ruleHeading)).toEqual([
      "Inside the service line, the ball is low",
      "Inside the service line, the ball sits up or the ball jumps",
      "Behind the baseline",
      "Inside the baseline",
    ]);
    const behind = STARTER_PLAN[2];
    expect(behind && lineOnSentence(behind)).toBe(
      "The line is on when the ball sits up; or when the opponent is wide left or the opponent is wide right.",
    );
    expect(behind?.targets.map(targetSentence)).toEqual([
      "At least 70 % kept: cross-court or middle, give or take 5",
    ]);
    expect(lineOnSentence({ lineOn: [] })).toBe("The line is never on.");
    expect(ruleHeading({ when: {} })).toBe("Every ball");
  });

  it("[PL2] a facet asks nothing once its last value is no longer chosen, and keeps its own order", () => {
    const two = toggleFacet(toggleFacet({}, "ballHeight", "jumps"), "ballHeight", "low");
    expect(two).toEqual({ ballHeight: ["low", "jumps"] });
    expect(toggleFacet(toggleFacet(two, "ballHeight", "low"), "ballHeight", "jumps")).toEqual({});
  });
});

describe("a ball that is tried", () => {
  it("[PL5] is told as it was understood", () => {
    expect(understood(LINE)).toBe("Struck behind the baseline, from the left. Down the line.");
    expect(understood({ from: placeFrom("insideServiceLine", "right") })).toBe(
      "Struck inside the service line, from the right. Kept: cross-court or middle.",
    );
    expect(channelTo(LINE)).toBe("left");
    expect(channelTo({ ...LINE, to: { x: -2.8, y: 0.1 } })).toBe("left");
    expect(channelTo({ from: LINE.from })).toBeUndefined();
  });

  it("[PL6] is judged with the rule and the condition, or with what has to be answered", () => {
    expect(said({ ...LINE, ballHeight: "sitsUp" })).toBe(
      "On plan: The line is on: the ball sits up. The ball went down the line.",
    );
    expect(said({ ...LINE, ballHeight: "low", opponent: "set" })).toBe(
      "Off plan: The line is not on, and the ball went down the line.",
    );
    expect(said({ ...LINE, to: undefined, ballHeight: "sitsUp" })).toBe(
      "Passed up: The line is on: the ball sits up. The ball was kept.",
    );
    expect(said(LINE)).toBe(
      "Can't tell: Whether the line is on depends on how high the ball was and where the opponent was. Answer that to know.",
    );
    expect(said({ from: placeFrom("insideServiceLine", "left"), ballHeight: "jumps" })).toBe(
      "Open: This rule leaves it to the player.",
    );
  });

  it("[PL6] has a sentence that ends for every reason", () => {
    const facets = ["ballHeight"] as const;
    const reasons: readonly Because[] = [
      { code: "noPlan" },
      { code: "otherKind" },
      { code: "noDirection" },
      { code: "noRule" },
      { code: "ruleUnclear", facets },
      { code: "free" },
      { code: "fromMiddle" },
      { code: "straight" },
      { code: "notStraight" },
      { code: "lineOn", condition: 0, facets },
      { code: "lineNotOn" },
      { code: "lineUnclear", conditions: [0], facets },
    ];
    for (const because of reasons) {
      expect(whySentence({ verdict: "open", ruleId: undefined, because }, undefined)).toMatch(/^[A-Z].*\.$/);
    }
  });
});
