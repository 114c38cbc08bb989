import { useShortcut } from "../keys/key-hints.ts";
import type { PadSnapshot } from "../pad-session.ts";
import { pointsOf } from "../say-score.ts";
import styles from "./courts.module.css";

/** "3–2 30–15", the side named first first; empty until the match is known. */
const scoreOf = ({ view }: PadSnapshot): string => {
  if (!view) return "";
  const { score } = view;
  if (score.over) return "over";
  return `${score.games.join("–")} ${pointsOf(score, "A")}–${pointsOf(score, "B")}`;
};

/** What of the other court wants its person. */
const needOf = ({ status, record }: PadSnapshot): string | undefined => {
  if (status.signal === "refused") return "refused";
  if (status.leader && record.epoch > 0) return "another phone leads";
  return undefined;
};

interface CourtSwitchProps {
  /** Of the court that is not on the screen. */
  readonly snapshot: PadSnapshot;
  readonly onGo: () => void;
}

/** Always on screen beside a second court: which it is, its score and what is unsent of it; one touch changes over. */
export const CourtSwitch = ({ snapshot, onGo }: CourtSwitchProps) => {
  const shortcut = useShortcut();
  const { record, status, otherUnsent } = snapshot;
  const unsent = status.unsent + otherUnsent;
  const need = needOf(snapshot);
  return (
    <nav className={styles.switch} aria-label="Courts">
      <button type="button" onClick={onGo} aria-keyshortcuts={shortcut("otherCourt")}>
        <svg viewBox="0 0 24 24" width="20" height="20" aria-hidden="true">
          <path d="M4 9h14l-4-4M20 15H6l4 4" fill="none" stroke="currentColor" strokeWidth="2.5" />
        </svg>
        <b>{record.courtName}</b>
        <span className={styles.names}>
          {record.names.A} – {record.names.B}
        </span>
        <b className={styles.score}>{scoreOf(snapshot)}</b>
        {need && <span>{need}</span>}
        {unsent > 0 && <span className={styles.unsent}>{unsent} unsent</span>}
      </button>
    </nav>
  );
};
