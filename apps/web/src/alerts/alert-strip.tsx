import { Mark } from "../loom/mark.tsx";
import { whereWords } from "./alert-item.tsx";
import { countSentence } from "./alert-words.ts";
import styles from "./alerts.module.css";
import { isOpen, STATE_FLAGS } from "./state-words.ts";
import { useAlert, useOpenCount, useRankedAlerts } from "./use-alerts.ts";

/** Where the panel is not beside the courts: the gravest alert in a line, and the way to all of them. SPEC rule AS19. */
export function AlertStrip({ open }: { readonly open: () => void }) {
  const [gravest = ""] = useRankedAlerts();
  const { line } = useAlert(gravest);
  const count = useOpenCount();
  if (line === undefined || !isOpen(line)) return null;
  const isLoud = line.state === "standing" && line.marks.snoozed === undefined;
  const [mark, word] = STATE_FLAGS[line.state];
  return (
    <button
      type="button"
      className={styles.strip}
      data-loud={isLoud || undefined}
      data-testid="alert-strip"
      aria-haspopup="dialog"
      onClick={open}
    >
      <Mark name={mark} />
      <span>
        <b>
          <span className="vh">{word}: </span>
          {whereWords(line)}
        </b>
        <span>{countSentence(line)}</span>
      </span>
      <b>{count} open</b>
    </button>
  );
}
