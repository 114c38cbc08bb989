import Link from "next/link";
import { ActionButton } from "../form/action-button.tsx";
import form from "../form/form.module.css";
import { matches } from "./history-words.ts";
import styles from "./players.module.css";

/** A player of whom nothing is charted, and what to do. SPEC PF7. */
export function NothingCharted({ playerName }: { readonly playerName: string }) {
  return (
    <div className={styles.state} data-testid="nothing-charted">
      <h2>No match of {playerName} is charted yet.</h2>
      <p>
        Add a match at the desk, make the court's code and give it to somebody with a phone. The figures come
        with the points.
      </p>
      <Link className={`${form.button} ${form.primary}`} href="/desk">
        Go to the days
      </Link>
    </div>
  );
}

interface NothingFitsProps {
  /** Charted matches, whatever the filter; absent where nobody asked. */
  readonly matchesInAll?: number;
  readonly countAll: () => void;
}

/** A filter that lets nothing through, and the way back. SPEC PF7. */
export function NothingFits({ matchesInAll, countAll }: NothingFitsProps) {
  return (
    <div className={styles.state} data-testid="nothing-fits">
      <h2>No match fits these filters.</h2>
      <p>
        {matchesInAll === undefined ? "" : `${matches(matchesInAll)} charted. `}Change a filter, or count all
        matches.
      </p>
      <ActionButton primary label="Count all matches" onPress={countAll} />
    </div>
  );
}
