import type { MatchStage } from "@courtloom/api";

export const STAGE_WORDS = {
  waiting: "Waiting",
  open: "In play",
  over: "Over",
  sealed: "Closed",
} as const satisfies Record<MatchStage, string>;
