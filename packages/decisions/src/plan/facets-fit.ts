import { BALL_HEIGHTS, BALL_TIMES, type BallFacets, OPPONENT_PLACES } from "@courtloom/match-log";
import { CHANNELS, DEPTHS_STRUCK } from "@courtloom/tennis";

export const FACETS = ["depth", "side", "ballHeight", "ballTime", "opponent"] as const;
/** One thing that a rule may ask of a ball. */
export type Facet = (typeof FACETS)[number];

/** Every value that a facet may have. */
export const FACET_VALUES = {
  depth: DEPTHS_STRUCK,
  side: CHANNELS,
  ballHeight: BALL_HEIGHTS,
  ballTime: BALL_TIMES,
  opponent: OPPONENT_PLACES,
} as const satisfies { readonly [F in Facet]: readonly NonNullable<BallFacets[F]>[number][] };

/** What is known of a ball; an absent or `undefined` member is unknown. */
export type KnownFacets = {
  readonly [F in Facet]?: NonNullable<BallFacets[F]>[number] | undefined;
};

/** Whether something holds: surely, surely not, or it cannot be told. */
export type Fit = "yes" | "no" | "unknown";

/** A facet that is absent, or allows all its values, asks nothing. */
export const asksNothing = (facets: BallFacets, facet: Facet): boolean => {
  const allowed: readonly string[] | undefined = facets[facet];
  return allowed === undefined || FACET_VALUES[facet].every((value) => allowed.includes(value));
};

/**
 * Whether a ball is one of those meant. A facet that is unknown at the ball neither fits nor contradicts: one facet
 * that contradicts says no, else one that is unknown leaves it unknown. SPEC D14.
 */
export const facetsFit = (facets: BallFacets, ball: KnownFacets): Fit => {
  let fit: Fit = "yes";
  for (const facet of FACETS) {
    const allowed: readonly string[] | undefined = facets[facet];
    if (allowed === undefined) continue;
    const value = ball[facet];
    if (value === undefined) {
      if (!asksNothing(facets, facet)) fit = "unknown";
    } else if (!allowed.includes(value)) return "no";
  }
  return fit;
};

/** The facets that would have to be answered to tell whether a ball is one of those meant; in order, empty when it is told. */
export const unknownFacets = (facets: BallFacets, ball: KnownFacets): readonly Facet[] =>
  facetsFit(facets, ball) === "unknown"
    ? FACETS.filter((facet) => ball[facet] === undefined && !asksNothing(facets, facet))
    : [];
