import type { BoardDay } from "@courtloom/sync";
import Link from "next/link";
import styles from "./board.module.css";
import { useBoardFacts } from "./board-facts.ts";
import { countItems } from "./day-counts.ts";
import { PanelSheet, type PanelSheetProps } from "./panel/panel-sheet.tsx";
import { useBoardMirror, useDayCounts, useEachSecond } from "./use-board.ts";
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
  const now = useEachSecond(() => wallTime(mirror.serverNowMs(), timeZone));
  return <time className={styles.clock}>{now}</time>;
}

export interface BoardHeaderProps {
  readonly day: BoardDay;
  readonly deskHref: string | null;
  /** Given where the panel does not stand beside the courts. */
  readonly sheet: PanelSheetProps | null;
}

/** The academy, the day, how many courts are at what, the time at the academy, and the way to the panel. */
export function BoardHeader({ day, deskHref, sheet }: BoardHeaderProps) {
  const { stale } = useBoardFacts();
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
      {sheet === null || stale ? null : <p className={styles.key}>Under each score: line balls missed</p>}
      {stale ? null : <Counts />}
      {sheet === null ? null : (
        <div className={styles.tools}>
          <PanelSheet {...sheet} />
        </div>
      )}
      <AcademyClock timeZone={day.timeZone} />
    </header>
  );
}
