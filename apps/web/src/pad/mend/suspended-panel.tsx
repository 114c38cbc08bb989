import pad from "../pad.module.css";
import styles from "./mend.module.css";

interface SuspendedPanelProps {
  /** Wall time, ready to show; absent when nobody knows. */
  readonly since: string | undefined;
  readonly onResume: () => void;
}

/** Play is suspended: nothing is charted until it goes on. */
export const SuspendedPanel = ({ since, onResume }: SuspendedPanelProps) => (
  <section className={styles.suspended} aria-label="Suspended" data-testid="suspended">
    <span className={styles.bars} aria-hidden="true" />
    <p>
      <b>Play is suspended{since ? ` since ${since}` : ""}.</b> The score, server and ends are kept as they
      are.
    </p>
    <button type="button" className={pad.primary} onClick={onResume}>
      Play goes on
    </button>
  </section>
);
