import type { AlertLine } from "@courtloom/protocol";
import type { PendingMark } from "@courtloom/sync";
import { REFUSAL_WORDS } from "../board/refusal-words.ts";
import styles from "./alerts.module.css";
import { askedWords, doneLines, snoozeWords } from "./mark-words.ts";
import { useAlerts, useAlertsPlace } from "./use-alerts.ts";

function Pending({ mark }: { readonly mark: PendingMark }) {
  const { mirror } = useAlertsPlace();
  const members = useAlerts(({ alerts }) => alerts.members);
  const said = askedWords(mark.mark, members);
  if (mark.status !== "refused")
    return (
      <li data-testid="unsent-mark">
        {said}: <b>{mark.status === "taken" ? "sent" : "not sent yet"}</b>
      </li>
    );
  return (
    <li data-testid="refused-mark" className={styles.refused}>
      <span>
        {said}: <b>not taken.</b> {mark.refusal ? REFUSAL_WORDS[mark.refusal] : ""}
      </span>
      <button type="button" className={styles.press} onClick={() => mirror.dismiss(mark.id)}>
        Put away
      </button>
    </li>
  );
}

/** Who did what about an alert and when, and what was said here and is not known to have arrived. */
export function AlertDone({
  line,
  marks,
}: {
  readonly line: AlertLine;
  readonly marks: readonly PendingMark[];
}) {
  const { timeZone } = useAlertsPlace();
  const { snoozed } = line.marks;
  const lines = doneLines(line, timeZone);
  if (lines.length === 0 && marks.length === 0 && snoozed === undefined) return null;
  return (
    <ul className={styles.done} data-testid="done-about">
      {snoozed ? (
        <li data-testid="snoozed">
          {snoozeWords(snoozed, timeZone)}: <q className="said">{snoozed.reason}</q>
        </li>
      ) : null}
      {lines.map((words) => (
        <li key={words}>{words}</li>
      ))}
      {marks.map((mark) => (
        <Pending key={mark.id} mark={mark} />
      ))}
    </ul>
  );
}
