import type { PlanContent } from "@courtloom/api";
import type { PlanRule } from "@courtloom/match-log";
import { ruleHeading } from "./facet-words.ts";
import { isSame } from "./same.ts";

export interface Merged {
  readonly content: PlanContent;
  /** What both changed in different ways; there the own change stands. */
  readonly both: readonly string[];
}

interface Three {
  readonly base: PlanContent;
  readonly theirs: PlanContent;
  readonly mine: PlanContent;
}

type Pick3<T> = (of: PlanContent) => T;

/** Whoever changed it wins; where both did, the own change. */
const choose = <T>({ base, theirs, mine }: Three, pick: Pick3<T>): T =>
  isSame(pick(base), pick(mine)) ? pick(theirs) : pick(mine);

const isDisputed = ({ base, theirs, mine }: Three, pick: Pick3<unknown>): boolean =>
  !isSame(pick(base), pick(mine)) && !isSame(pick(base), pick(theirs)) && !isSame(pick(mine), pick(theirs));

const orderOf = (three: Three, list: "rules" | "replaces"): readonly string[] => {
  const ids = (of: PlanContent) => of[list].map(({ id }) => id);
  const first = isSame(ids(three.base), ids(three.mine)) ? ids(three.theirs) : ids(three.mine);
  return [...new Set([...first, ...ids(three.theirs), ...ids(three.mine)])];
};

const ruleIn =
  (list: "rules" | "replaces", id: string): Pick3<PlanRule | undefined> =>
  (of) =>
    of[list].find((rule) => rule.id === id);

const mergeList = (three: Three, list: "rules" | "replaces"): readonly PlanRule[] =>
  orderOf(three, list).flatMap((id) => choose(three, ruleIn(list, id)) ?? []);

const idsOf = ({ base, theirs, mine }: Three): readonly string[] => [
  ...new Set(
    [base, theirs, mine].flatMap(({ rules, replaces }) => [...rules, ...replaces].map(({ id }) => id)),
  ),
];

const SAID = [
  ["words", "The words of the plan"],
  ["sentence", "The sentence for the change of ends"],
  ["question", "The question for the change of ends"],
] as const;

const disputes = (three: Three): readonly string[] => [
  ...SAID.flatMap(([part, name]) => (isDisputed(three, (of) => of[part].trim()) ? [name] : [])),
  ...idsOf(three).flatMap((id) => {
    const rule = [three.mine, three.theirs, three.base]
      .flatMap(({ rules, replaces }) => [...rules, ...replaces])
      .find((each) => each.id === id);
    const whole: Pick3<unknown> = (of) => [
      ruleIn("rules", id)(of),
      ruleIn("replaces", id)(of),
      of.ruleWords[id],
    ];
    return rule && isDisputed(three, whole) ? [ruleHeading(rule)] : [];
  }),
];

/** Two people's changes of one version put together, rule by rule. SPEC PL12. */
export const mergeContent = (three: Three): Merged => {
  const leftOut = [...new Set([...three.theirs.leavesOut, ...three.mine.leavesOut])].filter((id) =>
    choose(three, ({ leavesOut }) => leavesOut.includes(id)),
  );
  const worded = idsOf(three).flatMap((id) => {
    const words = choose(three, ({ ruleWords }) => ruleWords[id]);
    return words ? [[id, words] as const] : [];
  });
  return {
    content: {
      words: choose(three, ({ words }) => words),
      rules: mergeList(three, "rules"),
      replaces: mergeList(three, "replaces"),
      leavesOut: leftOut,
      ruleWords: Object.fromEntries(worded),
      sentence: choose(three, ({ sentence }) => sentence),
      question: choose(three, ({ question }) => question),
    },
    both: disputes(three),
  };
};
