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
  readonly onLeave: () => void;
}

/** Somebody else leads this match: the score can be followed, and nothing is charted twice. */
export const LeadTaken = ({ match, view, facts, onTakeOver, onLeave }: LeadTakenProps) => {
  const { title, sentences, offersTakeOver } = leadWords(facts);
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
            Take over
          </button>
        )}
        <button type="button" className={styles.secondary} onClick={onLeave}>
          Another match
        </button>
      </section>
    </>
  );
};
