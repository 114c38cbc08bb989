import type { PlaySuspended } from "@courtloom/match-log";
import pad from "../pad.module.css";
import { HEAT_CAUTION } from "./heat-caution.ts";
import styles from "./mend.module.css";
import type { Suspension } from "./suspended-since.ts";

const REASON_WORDS: Readonly<Record<PlaySuspended["reason"], string>> = {
  rain: "Rain",
  light: "Light",
  heat: "Heat",
  medical: "Treatment",
  other: "Another reason",
};

interface SuspendedPanelProps {
  readonly suspension: Suspension;
  readonly busy: boolean;
  readonly onResume: () => void;
}

/** Play is suspended: nothing is charted until it goes on. */
export const SuspendedPanel = ({ suspension, busy, onResume }: SuspendedPanelProps) => {
  const { reason, since } = suspension;
  return (
    <section className={styles.suspended} aria-label="Suspended" data-testid="suspended">
      <span className={styles.bars} aria-hidden="true" />
      <h2>Play is suspended since {since}</h2>
      <p>{REASON_WORDS[reason]}. Score, server, side and ends stay as they are.</p>
      {(reason === "heat" || reason === "medical") && <p>{HEAT_CAUTION}</p>}
      <button type="button" className={pad.primary} disabled={busy} onClick={onResume}>
        Play goes on
      </button>
    </section>
  );
};
