import type { Result } from "@courtloom/core";
import type { PlanRule } from "@courtloom/match-log";

/** What one version of a plan says. */
export interface PlanContent {
  /** The coach's own words for the whole plan; may be empty. */
  readonly words: string;
  /** In order; of several that fit a ball the first holds. Of a player's plan: the rules that it adds. */
  readonly rules: readonly PlanRule[];
  /** Of a player's plan: each stands in the place of the academy's rule with its id. Empty in the academy's. */
  readonly replaces: readonly PlanRule[];
  /** Of a player's plan: ids of the academy's rules that do not hold for the player. Empty in the academy's. */
  readonly leavesOut: readonly string[];
  /** The coach's own words for single rules, by the rule's id. */
  readonly ruleWords: Readonly<Record<string, string>>;
  /** One sentence for the player at a change of ends, where coaching is allowed; may be empty. */
  readonly sentence: string;
  /** One question for the same moment; may be empty. */
  readonly question: string;
}

export interface PlanVersionRow extends PlanContent {
  readonly planId: string;
  /** Null: the academy's plan. */
  readonly playerId: string | null;
  /** Counts 1, 2, 3 … in its plan. */
  readonly version: number;
  /** Of a player's plan: how many versions the academy's plan had when this one was saved; of the academy's 0. */
  readonly onVersion: number;
  /** Where it came from, or why; may be empty. */
  readonly note: string;
  readonly savedBy: string;
  /** Null when they are no longer a member. */
  readonly savedByName: string | null;
  readonly savedMs: number;
}

export interface NewPlanVersion {
  readonly academyId: string;
  readonly playerId: string | null;
  /** The version that was changed; 0: there is no plan yet. */
  readonly expected: number;
  readonly content: PlanContent;
  readonly note: string;
  /** Id of the member. */
  readonly savedBy: string;
}

/** Plans with all their versions, which are only ever added. */
export interface PlanStore {
  /** The newest version of the academy's plan, first, and of its players' plans; with `playerIds` of theirs alone. */
  readonly plans: (args: {
    readonly academyId: string;
    readonly playerIds?: readonly string[];
  }) => Promise<readonly PlanVersionRow[]>;
  /** All versions of one plan, the newest first; none while there is no such plan. */
  readonly planVersions: (args: {
    readonly academyId: string;
    readonly playerId: string | null;
  }) => Promise<readonly PlanVersionRow[]>;
  /** Adds the version after `expected`. The same one sent again by the same member is the one that was saved. */
  readonly savePlan: (
    version: NewPlanVersion,
  ) => Promise<
    Result<
      PlanVersionRow,
      { readonly code: "stale_plan"; readonly version: number } | { readonly code: "unknown_player" }
    >
  >;
}
