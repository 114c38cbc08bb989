import type { Courtside, CourtsideMatch } from "./courtside.ts";
import enter from "./enter.module.css";
import styles from "./pad.module.css";

interface MatchChoiceProps {
  readonly courtside: Courtside;
  readonly onChoose: (match: CourtsideMatch) => void;
  readonly onRead: () => void;
  readonly onEnterCode: () => void;
}

const STATE_WORDS: Readonly<Record<CourtsideMatch["state"], string>> = {
  empty: "no match",
  waiting: "waiting",
  playing: "playing",
  suspended: "suspended",
  over: "over",
};

/** The matches on this court in order of play. */
export const MatchChoice = ({ courtside, onChoose, onRead, onEnterCode }: MatchChoiceProps) => (
  <main className={`${enter.choose} ${styles.buttons}`}>
    <h1>{courtside.courtName}</h1>
    <p>
      {courtside.matches.length === 0
        ? "Nothing to chart on this court yet. The desk adds the order of play."
        : `${courtside.chartist}, choose the match to chart.`}
    </p>
    <ul>
      {courtside.matches.map((match) => (
        <li key={match.matchId}>
          <button type="button" onClick={() => onChoose(match)} data-testid={`match-${match.matchId}`}>
            <b>
              {match.names.A} – {match.names.B}
            </b>
            <span>
              {[STATE_WORDS[match.state], match.due, match.charting && `${match.charting} charts it`]
                .filter((part) => part)
                .join(", ")}
            </span>
          </button>
        </li>
      ))}
    </ul>
    <button type="button" className={styles.secondary} onClick={onRead}>
      Look again
    </button>
    <button type="button" className={styles.secondary} onClick={onEnterCode}>
      Another name or court
    </button>
  </main>
);
