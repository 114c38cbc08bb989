import type { ByPlayer, Side } from "@courtloom/core";
import type { ScoreState } from "@courtloom/tennis";
import { changedPart, pointsOf, sayNextScore } from "./say-score.ts";
import styles from "./score.module.css";

interface ScoreLinesProps {
  readonly names: ByPlayer<string>;
  readonly own: ByPlayer<boolean>;
  readonly score: ScoreState;
  /** The score before the point that was just charted; its change is what to look at. */
  readonly before: ScoreState | undefined;
  /** Opens the list of points; the score is its button. */
  readonly onPoints?: (() => void) | undefined;
}

const SERVES = { deuce: "serves right", ad: "serves left", "receiver-chooses": "receiver chooses" } as const;

/** Names, sets, games, points and the server of both sides. Only what the last point changed turns felt. */
export const ScoreLines = ({ names, own, score, before, onPoints }: ScoreLinesProps) => {
  const changed = before && changedPart(before, score);
  return (
    <>
      {/* Heard, not seen: what a point has made of the score. */}
      <p className={styles.hidden} role="status">
        {before && sayNextScore(before, score, names)}
      </p>
      <section className={styles.score} aria-label="Score" data-testid="score">
        {(["A", "B"] as const).map((side) => (
          <ScoreLine
            key={side}
            side={side}
            name={names[side]}
            own={own[side]}
            score={score}
            look={changed?.side === side ? changed.part : undefined}
          />
        ))}
        {onPoints && (
          <button type="button" className={styles.opens} onClick={onPoints} data-testid="points-list">
            <span className={styles.hidden}>Points: mend any of them</span>
            <svg viewBox="0 0 10 24" width="10" height="24" aria-hidden="true">
              <path d="M2 4l6 8-6 8" fill="none" stroke="currentColor" strokeWidth="2.5" />
            </svg>
          </button>
        )}
      </section>
    </>
  );
};

interface ScoreLineProps {
  readonly side: Side;
  readonly name: string;
  readonly own: boolean;
  readonly score: ScoreState;
  readonly look: "points" | "games" | "sets" | undefined;
}

const ScoreLine = ({ side, name, own, score, look }: ScoreLineProps) => {
  const i = side === "A" ? 0 : 1;
  const serves = score.server === side;
  const finished = score.sets.map((set, place) => ({ id: `set ${place}`, set, place }));
  return (
    <div className={styles.scoreLine} data-own={own} data-testid={`score-${side}`}>
      <span className={styles.server}>
        {serves && <i role="img" aria-label={`${name} serves`} data-testid="server-disc" />}
      </span>
      <span className={styles.name}>{name}</span>
      <span className={styles.serves}>{serves && score.side ? SERVES[score.side] : ""}</span>
      {finished.map(({ id, set, place }) => (
        <span
          key={id}
          className={styles.set}
          data-won={side === "A" ? set[0] > set[1] : set[1] > set[0]}
          data-look={look === "sets" && place === score.sets.length - 1}
        >
          {set[i]}
        </span>
      ))}
      {!score.over && (
        <>
          <span className={styles.games} data-look={look === "games"} data-testid="games">
            {score.games[i]}
          </span>
          <span className={styles.points} data-look={look === "points"} data-testid="points">
            {pointsOf(score, side)}
          </span>
        </>
      )}
    </div>
  );
};
