import { FACET_VALUES, type Facet } from "@courtloom/decisions";
import type { BallFacets } from "@courtloom/match-log";
import { FACET_LABELS, FACET_NAMES } from "./facet-words.ts";
import { toggleFacet } from "./toggle-facet.ts";
import { ToggleGroup } from "./toggle-group.tsx";

interface FacetTogglesProps {
  /** Which facets, in this order. */
  readonly ask: readonly Facet[];
  readonly facets: BallFacets;
  /** What the groups are about, for those who hear them. */
  readonly about: string;
  readonly onChange: (facets: BallFacets) => void;
}

/** Which balls are meant: of each facet some values, or any while none is chosen. */
export function FacetToggles({ ask, facets, about, onChange }: FacetTogglesProps) {
  return ask.map((facet) => {
    const labels: Readonly<Record<string, string>> = FACET_LABELS[facet];
    const chosen: readonly string[] = facets[facet] ?? [];
    return (
      <ToggleGroup
        key={facet}
        legend={chosen.length === 0 ? `${FACET_NAMES[facet]}: any` : FACET_NAMES[facet]}
        about={about}
        toggles={FACET_VALUES[facet].map((value) => ({
          id: value,
          label: labels[value] ?? value,
          pressed: chosen.includes(value),
        }))}
        onPress={(value) => onChange(toggleFacet(facets, facet, value))}
      />
    );
  });
}
