import { useState } from "react";
import styles from "./court-words.module.css";
import type { StaffWordsProps } from "./staff-words.tsx";
import { useCourtWords } from "./use-court-words.ts";
import { type MomentWords, wordsForMoment } from "./words-for-moment.ts";

const Agreed = ({ sentence, question }: MomentWords & { at: "change" }) => (
  <>
    {sentence !== "" && (
      <p className="said" data-testid="court-sentence">
        {sentence}
      </p>
    )}
    {question !== "" && (
      <p className="said" data-testid="court-question">
        {question}
      </p>
    )}
  </>
);

/** Two lines of the plan; a touch opens all of it. */
const PlanWords = ({ words }: MomentWords & { at: "between" }) => {
  const [isOpen, setOpen] = useState(false);
  return (
    <button
      type="button"
      className={styles.plan}
      aria-expanded={isOpen}
      onClick={() => setOpen(!isOpen)}
      data-testid="plan-words"
    >
      <span className={`said ${styles.lines}`}>{words}</span>
      <svg viewBox="0 0 24 12" width="20" height="10" aria-hidden="true">
        <path d="M4 2l8 8 8-8" fill="none" stroke="currentColor" strokeWidth="2.5" />
      </svg>
    </button>
  );
};

/** The coach's own words for this player, where the coaching mode lets a pad have them. In play their place stays, empty. SPEC CM10. */
export const CourtWords = ({ matchId, score, hasPoints, isBetween, hasSignal }: StaffWordsProps) => {
  const said = useCourtWords(matchId, hasSignal);
  const now = said && wordsForMoment(said, score, hasPoints);
  if (!now) return null;
  return (
    <section
      className={styles.court}
      aria-label="From the plan"
      hidden={now.at === "change" && !isBetween}
      data-rests={isBetween ? undefined : true}
      data-testid="court-words"
    >
      {now.at === "change" ? <Agreed {...now} /> : <PlanWords {...now} />}
    </section>
  );
};
