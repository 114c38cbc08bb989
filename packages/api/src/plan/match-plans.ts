import { type ByPlayer, byPlayer, type Side } from "@courtloom/core";
import { type EffectivePlan, planForPlayer } from "@courtloom/decisions";
import type { FrozenPlan, MatchOpened } from "@courtloom/match-log";
import type { MatchRow } from "../api-store.ts";
import { failure } from "../errors/failure.ts";
import type { StaffContext } from "../procedure.ts";
import type { PlanVersionRow } from "./plan-store.ts";
import { versionsOfFrozen } from "./versions-of-frozen.ts";

/** The plan of one side's player in a match. */
export interface MatchPlan {
  /** What the match began with, once it was opened; before, what it would begin with now. */
  readonly frozen: boolean;
  readonly plan: FrozenPlan;
  readonly words: string;
  /** The coach's own words for single rules, by the rule's id. */
  readonly ruleWords: Readonly<Record<string, string>>;
  /** For a change of ends; either may be empty. */
  readonly sentence: string;
  readonly question: string;
}

const openingOf = async (ctx: StaffContext, matchId: string): Promise<MatchOpened | undefined> => {
  const read = await ctx.log.read({ academyId: ctx.staff.academyId, matchId, after: 0, limit: 1 });
  if (!read.ok) throw failure(read.error.code);
  const body = read.value.entries[0]?.entry.body;
  return body?.kind === "MatchOpened" ? body : undefined;
};

type Said = Pick<MatchPlan, "words" | "ruleWords" | "sentence" | "question">;

/** Nothing, for a plan whose words are no longer kept. */
const saidIn = (plan: EffectivePlan | undefined): Said => ({
  words: plan?.words ?? "",
  ruleWords: plan?.ruleWords ?? {},
  sentence: plan?.sentence ?? "",
  question: plan?.question ?? "",
});

type History = ByPlayer<readonly PlanVersionRow[]> & { readonly academy: readonly PlanVersionRow[] };

const planOf = (side: Side, opened: MatchOpened | undefined, history: History): MatchPlan | null => {
  if (opened === undefined) {
    const now = planForPlayer(history.academy[0], history[side][0]);
    return now ? { frozen: false, plan: now.frozen, ...saidIn(now) } : null;
  }
  const plan = opened.plans?.[side];
  if (!plan) return null;
  // The log holds the rules; only the words are looked up, as they were in that version.
  const { academy, player } = versionsOfFrozen(plan, history.academy, history[side]);
  return { frozen: true, plan, ...saidIn(planForPlayer(academy, player)) };
};

/** The plans of a match's own players; null for a visitor and where there was no plan. Rule AP65. */
export const matchPlans = async (ctx: StaffContext, card: MatchRow): Promise<ByPlayer<MatchPlan | null>> => {
  const { academyId } = ctx.staff;
  const versions = (playerId: string | null) => ctx.store.planVersions({ academyId, playerId });
  const { A: a, B: b } = card.players;
  const [opened, academy, A, B] = await Promise.all([
    card.stage === "waiting" ? undefined : openingOf(ctx, card.matchId),
    versions(null),
    a.own ? versions(a.playerId) : [],
    b.own ? versions(b.playerId) : [],
  ]);
  const history = { academy, A, B };
  return byPlayer((side) => (card.players[side].own ? planOf(side, opened, history) : null));
};
