import type { CheckedLane, TakenLane } from "@courtloom/api";
import Link from "next/link";
import styles from "./desk.module.css";
import { countWords, laneWords, takenWords } from "./import-words.ts";
import { sayDate } from "./say-date.ts";

interface ImportLanesProps {
  readonly lanes: readonly CheckedLane[];
  /** What became of each, once the file was taken in. */
  readonly taken: readonly TakenLane[] | undefined;
}

/** The lanes of a file by match, with what is new in each or what became of it. */
export function ImportLanes({ lanes, taken }: ImportLanesProps) {
  return (
    <ol className={styles.order} data-testid="import-lanes">
      {lanes.map((lane) => {
        const became = taken?.[lane.no - 1];
        return (
          <li key={lane.no} className={styles.match}>
            <strong className={styles.players}>
              {lane.match ? `${lane.match.names.A} – ${lane.match.names.B}` : "Unknown match"}
            </strong>
            {lane.match ? <time dateTime={lane.match.playedOn}>{sayDate(lane.match.playedOn)}</time> : null}
            <span>{laneWords(lane)}</span>
            <ul className={styles.counts}>
              {(became ? takenWords(became) : countWords(lane)).map((text) => (
                <li key={text}>{text}</li>
              ))}
            </ul>
            {became && lane.match ? (
              <span className={styles.links}>
                <Link href={`/court/${lane.match.matchId}`}>Open the court's log</Link>
              </span>
            ) : null}
          </li>
        );
      })}
    </ol>
  );
}
