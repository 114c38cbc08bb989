import type { Facet } from "@courtloom/decisions";
import type { BallFacets } from "@courtloom/match-log";
import { ActionButton } from "../form/action-button.tsx";
import { FacetToggles } from "./facet-toggles.tsx";
import { facetsSentence } from "./facet-words.ts";
import styles from "./plan.module.css";

/** What a coach says first when asked when the line is on. */
const ASK: readonly Facet[] = ["ballHeight", "opponent", "ballTime", "depth", "side"];

interface LineOnFieldsProps {
  readonly lineOn: readonly BallFacets[];
  readonly about: string;
  readonly onChange: (lineOn: readonly BallFacets[]) => void;
}

/** The conditions under which the line is on; any of them is enough. */
export function LineOnFields({ lineOn, about, onChange }: LineOnFieldsProps) {
  const put = (at: number, next: readonly BallFacets[]) => onChange(lineOn.toSpliced(at, 1, ...next));
  const places = lineOn.map((facets, at) => ({ facets, at }));
  return (
    <>
      {places.length > 0 ? (
        <ol className={styles.parts}>
          {places.map(({ facets, at }) => (
            <li key={at} className={styles.part}>
              <p>
                <b>{at === 0 ? "The line is on when" : "or when"}</b>{" "}
                {facetsSentence(facets) || "any ball comes"}
              </p>
              <FacetToggles
                ask={ASK}
                facets={facets}
                about={`condition ${at + 1} ${about}`}
                onChange={(next) => put(at, [next])}
              />
              <ActionButton
                label="Take this condition out"
                about={`${at + 1} ${about}`}
                onPress={() => put(at, [])}
              />
            </li>
          ))}
        </ol>
      ) : (
        <p>No condition: the line is never on.</p>
      )}
      <ActionButton label="Add a condition" about={about} onPress={() => onChange([...lineOn, {}])} />
    </>
  );
}
