import { FACET_VALUES, type Facet } from "@courtloom/decisions";
import type { BallFacets } from "@courtloom/match-log";

/** With one value of a facet chosen or no longer chosen; the last one gone, the facet asks nothing. */
export const toggleFacet = (facets: BallFacets, facet: Facet, value: string): BallFacets => {
  const all: readonly string[] = FACET_VALUES[facet];
  const now: readonly string[] = facets[facet] ?? [];
  const next = all.filter((each) => now.includes(each) !== (each === value));
  const { [facet]: _, ...rest } = facets;
  return next.length === 0 ? rest : { ...rest, [facet]: next };
};
