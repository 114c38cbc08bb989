import type { BoardDay } from "@courtloom/sync";
import styles from "./board.module.css";
import { countItems } from "./day-counts.ts";
import { useBoard, useBoardMirror, useDayCounts, useIsStale, useTicking } from "./use-board.ts";
import { wallTime } from "./wall-time.ts";

function Counts() {
  const items = countItems(useDayCounts());
  return (
    <p className={styles.counts} data-testid="counts">
      {items.map(({ count, word }, i) => (
        <span key={word}>
          <b>{count}</b> {word}
          {i < items.length - 1 ? <span className="vh"> · </span> : null}
        </span>
      ))}
    </p>
  );
}

function AcademyClock({ timeZone }: { readonly timeZone: string }) {
  const mirror = useBoardMirror();
  const now = useTicking(() => wallTime(mirror.serverNowMs(), timeZone));
  return <time className={styles.clock}>{now}</time>;
}

/** The academy, the day, how many courts are at what, and the time at the academy. */
export function BoardHeader({ day }: { readonly day: BoardDay }) {
  const stale = useIsStale();
  const figures = useBoard(({ board }) =>
    [...board.courts.values()].some(({ tile }) => tile.staff !== undefined),
  );
  return (
    <header className={styles.header}>
      <h1>
        {day.academyName} <span>{day.dayName}</span>
      </h1>
      {stale ? null : <Counts />}
      <AcademyClock timeZone={day.timeZone} />
      {figures && !stale ? (
        <p className={styles.key}>Under each score: line balls missed. Woven band: what is usual.</p>
      ) : null}
    </header>
  );
}
