import type { ByPlayer } from "@courtloom/core";
import { otherSide } from "@courtloom/core";
import { describeSets, type ScoreState } from "@courtloom/tennis";
import styles from "./pad.module.css";

interface OverPanelProps {
  readonly names: ByPlayer<string>;
  readonly score: ScoreState;
  readonly unsent: number;
  /** Takes back an end that somebody stated; absent once the match is closed. */
  readonly onTakeBack: (() => void) | undefined;
  readonly onLeave: () => void;
}

const howItEnded = ({ winner, status }: ScoreState, names: ByPlayer<string>): string => {
  const by = winner ? `Match ${names[winner]}` : "No winner";
  const loser = winner ? names[otherSide(winner)] : "";
  const ways: Partial<Record<ScoreState["status"], string>> = {
    retired: `${loser} retired`,
    defaulted: `${loser} was defaulted`,
    walkover: `walkover, ${loser} absent`,
    unplayed: "not played to its end",
    timeUp: "time",
  };
  const way = ways[status];
  return way ? `${by} (${way})` : by;
};

/** The match is over: what comes next, and what still has to be sent. */
export const OverPanel = ({ names, score, unsent, onTakeBack, onLeave }: OverPanelProps) => (
  <section className={styles.over} aria-label="Match over" data-testid="match-over">
    <h2>Match over</h2>
    <p>
      {howItEnded(score, names)} {describeSets(score, score.winner ?? "A").replaceAll("-", "–")}
    </p>
    <p>
      {unsent > 0
        ? `${unsent} unsent. Keep this page open until all is sent.`
        : `All sent.${score.status === "completed" ? " Undo still mends the last point." : ""}`}
    </p>
    {onTakeBack && score.status !== "completed" && (
      <button type="button" className={styles.secondary} onClick={onTakeBack}>
        It is not over: take the end back
      </button>
    )}
    <button type="button" className={styles.primary} onClick={onLeave}>
      Next match or another name
    </button>
  </section>
);
