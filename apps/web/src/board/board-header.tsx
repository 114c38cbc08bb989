import type { BoardDay } from "@courtloom/sync";
import Link from "next/link";
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
export function BoardHeader({ day, deskHref }: { readonly day: BoardDay; readonly deskHref: string | null }) {
  const stale = useIsStale();
  const figures = useBoard(({ board }) =>
    [...board.courts.values()].some(({ tile }) => tile.staff !== undefined),
  );
  return (
    <header className={styles.header}>
      <h1>
        {deskHref === null ? (
          day.academyName
        ) : (
          <Link className={styles.home} href={deskHref} prefetch={false}>
            {day.academyName}
            <span className="vh">, to the desk</span>
          </Link>
        )}{" "}
        <span>{day.dayName}</span>
      </h1>
      {stale ? null : <Counts />}
      <AcademyClock timeZone={day.timeZone} />
      {figures && !stale ? (
        <p className={styles.key}>Under each score: line balls missed. Woven band: what is usual.</p>
      ) : null}
    </header>
  );
}
