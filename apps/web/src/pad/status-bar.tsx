import styles from "./pad.module.css";
import type { PadLevel } from "./pad-settings.ts";

interface StatusBarProps {
  readonly courtName: string;
  readonly chartist: string;
  readonly level: PadLevel;
  readonly unsent: number;
  readonly onMore: () => void;
}

export const LEVEL_LABELS: Readonly<Record<PadLevel, string>> = {
  score: "Score only",
  key: "Key balls",
  every: "Every ball",
};

/** Always on screen: the court, who charts, the level, and what the server does not have yet. */
export const StatusBar = ({ courtName, chartist, level, unsent, onMore }: StatusBarProps) => (
  <header className={styles.status}>
    <span data-testid="court-name">{courtName}</span>
    <span className={styles.chartist} data-testid="chartist">
      {chartist}
    </span>
    <button
      type="button"
      onClick={onMore}
      data-testid="level"
      aria-label={`Level: ${LEVEL_LABELS[level]}. Change`}
    >
      {LEVEL_LABELS[level]}
    </button>
    <output className={styles.unsent} data-testid="unsent">
      {unsent > 0 ? (
        <>
          <svg viewBox="0 0 24 24" width="18" height="18" aria-hidden="true">
            <path d="M12 20V5M5 11l7-7 7 7" fill="none" stroke="currentColor" strokeWidth="3" />
          </svg>
          <b>{unsent}</b> unsent
        </>
      ) : (
        "All sent"
      )}
    </output>
  </header>
);
