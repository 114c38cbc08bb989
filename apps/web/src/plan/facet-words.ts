import type { Facet } from "@courtloom/decisions";
import type { BallFacets, PlanChoice, PlanRule, RuleAim, ShareTarget } from "@courtloom/match-log";

type Values<F extends Facet> = NonNullable<BallFacets[F]>[number];
type FacetWords = { readonly [F in Facet]: Readonly<Record<Values<F>, string>> };

/** What a person chooses from. */
export const FACET_LABELS: FacetWords = {
  depth: {
    behindBaseline: "Behind the baseline",
    insideBaseline: "Inside the baseline",
    insideServiceLine: "Inside the service line",
  },
  side: { left: "Left", middle: "Middle", right: "Right" },
  ballHeight: { low: "Low", netHigh: "Net high", sitsUp: "Sits up", jumps: "Jumps" },
  ballTime: { set: "Set", hurried: "Hurried", stretched: "Stretched" },
  opponent: { set: "Set", wideLeft: "Wide left", wideRight: "Wide right", deep: "Deep", net: "At the net" },
};

export const FACET_NAMES: Readonly<Record<Facet, string>> = {
  depth: "Struck from",
  side: "Side it was struck from",
  ballHeight: "The ball",
  ballTime: "The player",
  opponent: "The opponent",
};

/** The same within a sentence. */
const IN_SENTENCE: FacetWords = {
  depth: {
    behindBaseline: "behind the baseline",
    insideBaseline: "inside the baseline",
    insideServiceLine: "inside the service line",
  },
  side: { left: "from the left", middle: "from the middle", right: "from the right" },
  ballHeight: {
    low: "the ball is low",
    netHigh: "the ball is net high",
    sitsUp: "the ball sits up",
    jumps: "the ball jumps",
  },
  ballTime: {
    set: "the player is set",
    hurried: "the player is hurried",
    stretched: "the player is stretched",
  },
  opponent: {
    set: "the opponent is set",
    wideLeft: "the opponent is wide left",
    wideRight: "the opponent is wide right",
    deep: "the opponent is deep",
    net: "the opponent is at the net",
  },
};

export const FACET_ORDER: readonly Facet[] = ["depth", "side", "ballHeight", "ballTime", "opponent"];

const orList = (texts: readonly string[]): string =>
  texts.length < 2 ? (texts[0] ?? "") : `${texts.slice(0, -1).join(", ")} or ${texts.at(-1)}`;

const wordsOf = (facets: BallFacets, facet: Facet): string => {
  const words: Readonly<Record<string, string>> = IN_SENTENCE[facet];
  return orList((facets[facet] ?? []).map((value) => words[value] ?? ""));
};

/** "behind the baseline, the ball is low or the ball is net high"; empty when every ball is meant. */
export const facetsSentence = (facets: BallFacets): string =>
  FACET_ORDER.map((facet) => wordsOf(facets, facet))
    .filter((text) => text !== "")
    .join(", ");

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What a rule is for, as its heading: "Behind the baseline, from the left". */
export const ruleHeading = ({ when }: Pick<PlanRule, "when">): string =>
  capital(facetsSentence(when)) || "Every ball";

export const AIM_LABELS: Readonly<Record<RuleAim, string>> = {
  keep: "Keep it",
  straight: "Down the line",
  free: "Free",
};

export const AIM_MEANS: Readonly<Record<RuleAim, string>> = {
  keep: "Cross-court or middle; down the line only when the line is on.",
  straight: "These balls mostly go straight.",
  free: "The player's own choice: nothing is off plan.",
};

export const CHOICE_LABELS: Readonly<Record<PlanChoice, string>> = {
  kept: "Kept: cross-court or middle",
  line: "Down the line",
  cross: "Cross-court",
  middle: "To the middle",
  fromMiddle: "From the middle to a side",
};

const inHundred = (share: number): number => Math.round(share * 100);

/** "At least 70 % kept: cross-court or middle, give or take 5". */
export const targetSentence = ({ choice, wants, share, tolerance }: ShareTarget): string => {
  const bound = wants === "atLeast" ? "At least" : "At most";
  const slack = tolerance === 0 ? "" : `, give or take ${inHundred(tolerance)}`;
  return `${bound} ${inHundred(share)} % ${CHOICE_LABELS[choice].toLowerCase()}${slack}`;
};

/** When the line is on by a rule that keeps the ball. */
export const lineOnSentence = ({ lineOn }: Pick<PlanRule, "lineOn">): string =>
  lineOn.length === 0
    ? "The line is never on."
    : `The line is on when ${lineOn.map((facets) => facetsSentence(facets) || "any ball comes").join("; or when ")}.`;

/** Which facets nobody answered, within a sentence. */
export const missingSentence = (facets: readonly Facet[]): string =>
  orList(
    facets.map(
      (facet) =>
        ({
          depth: "where it was struck",
          side: "the side it was struck from",
          ballHeight: "how high the ball was",
          ballTime: "what time the player had",
          opponent: "where the opponent was",
        })[facet],
    ),
  ).replace(" or ", " and ");
