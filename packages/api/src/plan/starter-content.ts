import { STARTER_PLAN } from "@courtloom/decisions";
import type { PlanContent } from "./plan-store.ts";

/** The starter plan with its words: an example, plainly to be changed. */
export const STARTER_CONTENT: PlanContent = {
  words: "An example to change: build the point cross-court, and go down the line when the ball allows it.",
  rules: STARTER_PLAN,
  replaces: [],
  leavesOut: [],
  ruleWords: {
    "short-low": "Short and low: mostly straight, and go forward behind it.",
    "short-high": "Short and high: your choice. Choose late and hit firmly.",
    "behind-baseline":
      "Behind the baseline keep it cross-court or middle. Go down the line when the ball sits up or the opponent is off the court.",
    "inside-baseline":
      "Inside the baseline with time you may go down the line, and whenever the ball sits up or the opponent is off the court.",
  },
  sentence: "Build the point cross-court, and wait for the ball that lets you go.",
  question: "Which ball are you waiting for?",
};
