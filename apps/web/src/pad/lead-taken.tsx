import type { MatchView } from "@courtloom/match-log";
import type { CourtsideMatch } from "./courtside.ts";
import styles from "./pad.module.css";
import { ScoreLines } from "./score-lines.tsx";

interface LeadTakenProps {
  readonly match: CourtsideMatch;
  readonly view: MatchView | undefined;
  readonly leader: string | undefined;
  readonly unsent: number;
  readonly onTryAgain: () => void;
  readonly onLeave: () => void;
}

/** Somebody else charts this match: the score can be followed, and nothing is charted twice. */
export const LeadTaken = ({ match, view, leader, unsent, onTryAgain, onLeave }: LeadTakenProps) => (
  <>
    {view && <ScoreLines names={match.names} own={match.own} score={view.score} before={undefined} />}
    <section className={styles.over} data-testid="lead-taken">
      <h2>{leader ?? "Another phone"} charts this court</h2>
      <p>This phone follows the score. Only one phone charts a match at a time.</p>
      {unsent > 0 && <p>{unsent} unsent stay on this phone.</p>}
      <button type="button" className={styles.primary} onClick={onTryAgain}>
        Try again
      </button>
      <button type="button" className={styles.secondary} onClick={onLeave}>
        Another match
      </button>
    </section>
  </>
);
