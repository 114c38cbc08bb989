import type { MatchView } from "@courtloom/match-log";
import type { CourtsideMatch } from "./courtside.ts";
import { type LeadFacts, leadWords } from "./lead-words.ts";
import styles from "./pad.module.css";
import { ScoreLines } from "./score-lines.tsx";

interface LeadTakenProps {
  readonly match: CourtsideMatch;
  readonly view: MatchView | undefined;
  readonly facts: LeadFacts;
  readonly onTakeOver: () => void;
  /** Absent where nothing is left to chart. */
  readonly onSecond: (() => void) | undefined;
  readonly onLeave: () => void;
}

/** Somebody else leads this match: the score can be followed, and nothing is charted twice. */
export const LeadTaken = ({ match, view, facts, onTakeOver, onSecond, onLeave }: LeadTakenProps) => {
  const { title, sentences, offersTakeOver, offersSecond } = leadWords(facts);
  return (
    <>
      {view && <ScoreLines names={match.names} own={match.own} score={view.score} before={undefined} />}
      <section className={styles.over} data-testid="lead-taken">
        <h2>{title}</h2>
        {sentences.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        {offersTakeOver && (
          <button type="button" className={styles.primary} onClick={onTakeOver} data-testid="take-over">
            {facts.led ? "Take the lead back" : "Take over"}
          </button>
        )}
        {onSecond && offersSecond && (
          <>
            <p>
              As second your points are kept beside the score and compared. They never count by themselves.
            </p>
            <button type="button" className={styles.secondary} onClick={onSecond} data-testid="chart-second">
              Chart as second
            </button>
          </>
        )}
        <button type="button" className={styles.secondary} onClick={onLeave}>
          Another match
        </button>
      </section>
    </>
  );
};
