import type { CoachingMode } from "@courtloom/match-log";

/** Said after the word "Coaching". */
export const COACHING_LABELS = {
  practice: "Practice",
  permitted: "Permitted",
  notPermitted: "Not permitted",
  notKnown: "Not known",
} as const satisfies Record<CoachingMode, string>;

/** Said wherever the mode is chosen: the officials decide, not this product. */
export const COACHING_CAUTION =
  "Check this event's rules. Only the sanctioning body and the officials decide whether coaching or analysis devices may be used. If in doubt, keep this screen closed until play ends.";

/** What the chosen mode means for what staff see and say. */
export const COACHING_MEANS = {
  practice: "Staff see everything; figures may be spoken about.",
  permitted: "Staff see everything; figures may be spoken about when the rules allow it.",
  notPermitted: "Keep figures from the player.",
  notKnown: "Keep figures from the player until it is known.",
} as const satisfies Record<CoachingMode, string>;

/** Two players of one academy meet: whatever the mode, its staff help neither. */
export const BOTH_OURS = "Both ours: speak to neither, keep figures from both.";
