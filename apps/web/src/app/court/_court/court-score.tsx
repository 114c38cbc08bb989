import type { MatchView } from "@courtloom/match-log";
import type { ReactNode } from "react";
import { type CoachingFacts, coachingCaption } from "../../../board/coaching-caption.ts";
import { endWords } from "../../../board/score-lines.ts";
import { ScoreTable } from "../../../board/score-table.tsx";
import { Mark } from "../../../loom/mark.tsx";
import styles from "./court.module.css";
import type { CourtHeading } from "./court-heading.ts";
import { tileScoreOf } from "./tile-score.ts";

const stateWords = (view: MatchView, heading: CourtHeading): string => {
  const end = endWords(heading.names, tileScoreOf(view.score));
  if (end !== null) return `Over, ${end}`;
  if (view.suspended) return "Suspended";
  return view.points.length === 0 ? "No point yet" : "In play";
};

/** The court's number, the score by set, how it stands, and what may be passed on. */
export function CourtScore({
  view,
  heading,
  coaching,
  back,
  children,
}: {
  readonly view: MatchView;
  readonly heading: CourtHeading;
  /** In force now; what the match began with may be older. */
  readonly coaching: CoachingFacts;
  readonly back: ReactNode;
  readonly children?: ReactNode;
}) {
  const { players } = view.opened;
  const own = { A: players.A.own, B: players.B.own };
  const caption = coachingCaption(coaching);
  return (
    <header className={styles.head}>
      <div className={styles.title}>
        <h1>{heading.courtNo === null ? "Match" : `Court ${heading.courtNo}`}</h1>
        {heading.dayName === null ? null : <p>{heading.dayName}</p>}
        {back}
      </div>
      <div className={styles.score}>
        <ScoreTable names={heading.names} own={own} score={tileScoreOf(view.score)} />
      </div>
      <div className={styles.state}>
        <p className={styles.stands}>
          {view.suspended ? <Mark name="suspended" /> : null}
          <span data-testid="court-state">{stateWords(view, heading)}</span>
        </p>
        {children}
        {caption === null ? null : (
          <p className={styles.caption} data-testid="coaching">
            {caption}
          </p>
        )}
      </div>
    </header>
  );
}
