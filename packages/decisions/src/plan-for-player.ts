import type { FrozenPlan, PlanRule } from "@courtloom/match-log";

/** One version of a plan, with the coach's own words. */
export interface PlanText {
  readonly planId: string;
  /** Counts 1, 2, 3 … */
  readonly version: number;
  readonly words: string;
  /** Own words for single rules, by the rule's id. */
  readonly ruleWords: Readonly<Record<string, string>>;
  readonly rules: readonly PlanRule[];
  /** One sentence and one question for a change of ends; either may be empty. */
  readonly sentence: string;
  readonly question: string;
}

/** What a player's plan changes of the academy's. Its `rules` are those that it adds. */
export interface PlayerPlanText extends PlanText {
  /** Each stands in the place of the academy's rule with its id. */
  readonly replaces: readonly PlanRule[];
  /** Ids of the academy's rules that do not hold for this player. */
  readonly leavesOut: readonly string[];
}

export interface EffectivePlan {
  /** What a match freezes. */
  readonly frozen: FrozenPlan;
  readonly words: string;
  readonly ruleWords: Readonly<Record<string, string>>;
  readonly sentence: string;
  readonly question: string;
  /** Ids of the rules that are the player's own: added or put in another's place. */
  readonly own: readonly string[];
  /** Ids of the rules in `replaces` whose academy's rule is no longer there; they do not hold. */
  readonly unplaced: readonly string[];
}

const asItIs = ({ planId, version, rules, ...said }: PlanText): EffectivePlan => ({
  frozen: { planId, version, rules },
  words: said.words,
  ruleWords: said.ruleWords,
  sentence: said.sentence,
  question: said.question,
  own: [],
  unplaced: [],
});

const wordsOf = (
  rules: readonly PlanRule[],
  own: readonly string[],
  academy: PlanText | undefined,
  player: PlanText,
): Record<string, string> =>
  Object.fromEntries(
    rules.flatMap(({ id }) => {
      const words = (own.includes(id) ? player : academy)?.ruleWords[id];
      return words ? [[id, words]] : [];
    }),
  );

/** Of the player's own plan where it says something, else of the academy's. */
const saidOf = (
  academy: PlanText | undefined,
  player: PlanText,
  what: "words" | "sentence" | "question",
): string => (player[what] === "" ? (academy?.[what] ?? "") : player[what]);

const merge = (academy: PlanText | undefined, player: PlayerPlanText): EffectivePlan => {
  const added = new Set(player.rules.map(({ id }) => id));
  const replaced = new Map(player.replaces.map((rule) => [rule.id, rule]));
  const kept = (academy?.rules ?? [])
    .filter(({ id }) => !added.has(id) && !player.leavesOut.includes(id))
    .map((rule) => replaced.get(rule.id) ?? rule);
  const rules = [...player.rules, ...kept];
  const own = rules.filter(({ id }) => added.has(id) || replaced.has(id)).map(({ id }) => id);
  const there = new Set(academy?.rules.map(({ id }) => id));
  return {
    // Either plan's next version makes this one greater, so that no number stands for two plans.
    frozen: { planId: player.planId, version: (academy?.version ?? 0) + player.version, rules },
    words: saidOf(academy, player, "words"),
    ruleWords: wordsOf(rules, own, academy, player),
    sentence: saidOf(academy, player, "sentence"),
    question: saidOf(academy, player, "question"),
    own,
    unplaced: player.replaces.filter(({ id }) => !there.has(id)).map(({ id }) => id),
  };
};

/**
 * The plan that holds for one player: the academy's, with what the player's own plan changes of it. Rules that the
 * player's plan adds come first, since they speak of something narrower; one that it replaces keeps its place.
 * `undefined` when there is neither. SPEC PL3.
 */
export const planForPlayer = (
  academy: PlanText | undefined,
  player: PlayerPlanText | undefined,
): EffectivePlan | undefined => {
  if (player) return merge(academy, player);
  return academy && asItIs(academy);
};
