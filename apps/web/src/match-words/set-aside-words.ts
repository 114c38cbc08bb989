import type { SetAsideReason } from "@courtloom/match-log";

/** Why the score could not take an entry. */
export const SET_ASIDE_WORDS = {
  matchOver: "the match was over",
  unknownTarget: "what it corrects is not in this log",
  impossibleScore: "there is no such score",
  notLead: "another phone led the match by then",
  secondOpening: "the match was open already",
  sealed: "the match was closed",
  notSuspended: "play was not suspended",
} satisfies Record<SetAsideReason, string>;
