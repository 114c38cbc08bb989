import type { PlanContent } from "../plan/plan-store.ts";

/** A plan of one rule of its own; as a player's plan it adds that rule. */
export const samplePlan = (words = "Build first.") =>
  ({
    words,
    rules: [
      {
        id: "back",
        when: { depth: ["behindBaseline"], side: ["left", "right"] },
        aim: "keep",
        lineOn: [{ ballHeight: ["sitsUp"] }],
        targets: [{ choice: "kept", wants: "atLeast", share: 0.7, tolerance: 0.05 }],
      },
    ],
    replaces: [],
    leavesOut: [],
    ruleWords: { back: "Keep it cross or middle until it sits up." },
    sentence: "Wait for the ball that sits up.",
    question: "Which ball would you change on?",
  }) satisfies PlanContent;
