import type { LoggedEntry, MatchView } from "@courtloom/match-log";
import { useEffect, useMemo, useRef } from "react";
import { wallTime } from "../../../board/wall-time.ts";
import styles from "./court.module.css";
import { type LogReading, logLines } from "./log-lines.ts";

/** Every entry in order, in words: when, by whom, the score after it, and what became of it. */
export function CourtLog({
  entries,
  view,
  names,
  timeZone,
  chartists,
  point,
}: LogReading & {
  readonly entries: readonly LoggedEntry[];
  readonly view: MatchView;
  readonly timeZone: string;
  /** Entry id of the point that somebody came for: marked, and shown at once. */
  readonly point: string | null;
}) {
  const list = useRef<HTMLOListElement>(null);
  const lines = useMemo(
    () => logLines(entries, view, { names, chartists }),
    [entries, view, names, chartists],
  );
  const isThere = lines.some(({ id }) => id === point);
  useEffect(() => {
    if (isThere) list.current?.querySelector("[aria-current]")?.scrollIntoView({ block: "center" });
  }, [isThere]);
  return (
    <section className={styles.log} aria-labelledby="log">
      <h2 id="log">
        Log <span>{lines.length === 1 ? "1 entry" : `${lines.length} entries`}</span>
      </h2>
      <ol ref={list} data-testid="log">
        {lines.map((line) => (
          <li
            key={line.id}
            id={`entry-${line.pos}`}
            data-testid={`entry-${line.pos}`}
            data-struck={line.struck || undefined}
            aria-current={line.id === point || undefined}
          >
            <span className={styles.pos}>{line.pos}</span>
            <time dateTime={new Date(line.wallMs).toISOString()}>
              {wallTime(line.wallMs, timeZone, true)}
            </time>
            <span className={styles.words}>
              {line.struck ? <s>{line.words}</s> : line.words}
              {line.note === null ? null : <em>{line.note}</em>}
            </span>
            <span className={styles.after}>{line.score}</span>
            <span className={styles.who}>{line.who}</span>
          </li>
        ))}
      </ol>
    </section>
  );
}
