import { ASKS, type Ask, type BallFacets, type PlanRule, type ShotAsks } from "@courtloom/match-log";
import { asksNothing, type Facet } from "./facets-fit.ts";

const ASKED = ["ballHeight", "opponent", "ballTime"] as const satisfies readonly (Ask & Facet)[];

/** What the figures of short balls stand on, whatever the plan says. */
const OF_SHORT_BALLS: readonly Ask[] = ["ballHeight", "cameIn"];

const isFor = ({ when }: PlanRule, isShort: boolean): boolean =>
  when.depth === undefined || when.depth.some((depth) => (depth === "insideServiceLine") === isShort);

/** Facets to ask, the most telling first. */
const neededBy = (rules: readonly PlanRule[]): readonly Ask[] => {
  const facets = rules.flatMap((rule): readonly BallFacets[] => [rule.when, ...rule.lineOn]);
  return ASKED.filter((ask) => facets.some((each) => !asksNothing(each, ask)));
};

const inOrder = (asks: readonly Ask[]): readonly Ask[] =>
  [...ASKED, ...ASKS.filter((ask) => !ASKED.some((asked) => asked === ask))].filter((ask) =>
    asks.includes(ask),
  );

/**
 * What the pad asks so that a plan can judge: of line balls what tells which rule holds and whether the line was on,
 * of short balls that and what their figures stand on. Whether a player hesitated only where somebody wants it. No
 * rules: the short balls' figures alone. SPEC D20.
 */
export const asksOfPlan = (
  rules: readonly PlanRule[],
  wanted: { readonly hesitated?: boolean } = {},
): ShotAsks => {
  const also: readonly Ask[] = wanted.hesitated ? ["hesitated"] : [];
  const short = neededBy(rules.filter((rule) => isFor(rule, true)));
  return {
    line: inOrder([...neededBy(rules.filter((rule) => isFor(rule, false))), ...also]),
    short: inOrder([...short, ...OF_SHORT_BALLS, ...also]),
  };
};
