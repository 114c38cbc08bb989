import type { PadSnapshot } from "../pad-session.ts";
import { isSameScore, scoreWords } from "./score-words.ts";
import styles from "./second.module.css";

/** Always on screen of whoever charts as second: that they do, beside whom, and the lead's score where it differs. */
export const SecondBar = ({ snapshot }: { readonly snapshot: PadSnapshot }) => {
  const { second } = snapshot.status;
  if (!second) return null;
  const own = snapshot.view?.score;
  const lead = snapshot.whole.view?.score;
  const begun = snapshot.log.length > 1;
  const differs = begun && own && lead && !isSameScore(own, lead);
  return (
    <div className={styles.bar} data-testid="second">
      <span>
        <b>Second</b>
        {second.leader ? `, beside ${second.leader.by}` : ", beside the score"}
      </span>
      <output data-testid="lead-score" aria-label="Score of whoever leads">
        {differs ? `Lead: ${scoreWords(lead)}` : ""}
      </output>
    </div>
  );
};
