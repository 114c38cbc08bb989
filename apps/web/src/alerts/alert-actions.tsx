import type { AlertLine, MarkAsked } from "@courtloom/protocol";
import { useState } from "react";
import styles from "./alerts.module.css";
import { AssignForm } from "./assign-form.tsx";
import { SnoozeForm } from "./snooze-form.tsx";
import { isOpen } from "./state-words.ts";
import { useAlertsPlace } from "./use-alerts.ts";

interface ActionsProps {
  readonly line: AlertLine;
  /** Court and player, so that each button says aloud which alert it is about. */
  readonly about: string;
}

function Useful({ line, about, say }: ActionsProps & { readonly say: (mark: MarkAsked) => void }) {
  const { memberId } = useAlertsPlace();
  const mine = line.marks.useful.find((mark) => mark.memberId === memberId)?.useful;
  return (
    <fieldset className={styles.useful}>
      <legend className="vh">Was this alert useful? {about}</legend>
      {[true, false].map((useful) => (
        <button
          key={String(useful)}
          type="button"
          className={styles.press}
          aria-pressed={mine === useful}
          onClick={() => say({ kind: "useful", useful })}
        >
          {useful ? "Useful" : "Not useful"}
        </button>
      ))}
    </fieldset>
  );
}

/** What a person can do about an alert: seen, assign, snooze while it is open; useful or not at any time. SPEC rule AS17. */
export function AlertActions({ line, about }: ActionsProps) {
  const { mirror, memberId } = useAlertsPlace();
  const [form, setForm] = useState<"assign" | "snooze" | null>(null);
  const say = (mark: MarkAsked) => {
    mirror.mark(line.key, mark);
    setForm(null);
  };
  const { seen, snoozed } = line.marks;
  const isSeen = seen.some((mark) => mark.memberId === memberId);
  return (
    <div className={styles.acts}>
      {isOpen(line) ? (
        <fieldset className={styles.actions}>
          <legend className="vh">{about}</legend>
          <button
            type="button"
            className={styles.press}
            aria-pressed={isSeen}
            onClick={() => say({ kind: "seen" })}
          >
            Seen
          </button>
          <button
            type="button"
            className={styles.press}
            aria-expanded={form === "assign"}
            onClick={() => setForm(form === "assign" ? null : "assign")}
          >
            Assign
          </button>
          {snoozed ? (
            <button type="button" className={styles.press} onClick={() => say({ kind: "wake" })}>
              End snooze
            </button>
          ) : (
            <button
              type="button"
              className={styles.press}
              aria-expanded={form === "snooze"}
              onClick={() => setForm(form === "snooze" ? null : "snooze")}
            >
              Snooze
            </button>
          )}
        </fieldset>
      ) : null}
      {form === "assign" ? (
        <AssignForm
          assigned={line.marks.assigned?.memberId ?? null}
          assign={(to) => say({ kind: "assign", memberId: to })}
        />
      ) : null}
      {form === "snooze" ? (
        <SnoozeForm
          snooze={(reason, until) => say({ kind: "snooze", reason, until })}
          cancel={() => setForm(null)}
        />
      ) : null}
      <Useful {...{ line, about, say }} />
    </div>
  );
}
