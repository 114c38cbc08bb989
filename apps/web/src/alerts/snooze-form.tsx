import { MAX_SNOOZE_REASON, SNOOZE_ENDS, type SnoozeEnd } from "@courtloom/protocol";
import { type FormEvent, useEffect, useId, useRef, useState } from "react";
import styles from "./alerts.module.css";
import { UNTIL_WORDS } from "./mark-words.ts";

const SAY_WHY = "Say why: the others see it beside the alert.";

/** Asks why and until when; nothing is snoozed without a reason. */
export function SnoozeForm({
  snooze,
  cancel,
}: {
  readonly snooze: (reason: string, until: SnoozeEnd) => void;
  readonly cancel: () => void;
}) {
  const id = useId();
  const why = useRef<HTMLInputElement>(null);
  // The form was opened with the button above it: what is asked next is here.
  useEffect(() => why.current?.focus(), []);
  const [reason, setReason] = useState("");
  const [until, setUntil] = useState<SnoozeEnd>("set");
  const [isAsked, setAsked] = useState(false);
  const isMissing = reason.trim() === "";
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (isMissing) setAsked(true);
    else snooze(reason.trim(), until);
  };
  return (
    <form className={styles.form} onSubmit={submit} noValidate aria-label="Snooze">
      <label htmlFor={id}>Why</label>
      <input
        id={id}
        ref={why}
        value={reason}
        maxLength={MAX_SNOOZE_REASON}
        autoComplete="off"
        aria-invalid={isAsked && isMissing}
        aria-describedby={`${id}-why`}
        onChange={(event) => setReason(event.currentTarget.value)}
      />
      <p id={`${id}-why`} data-problem={(isAsked && isMissing) || undefined}>
        {SAY_WHY}
      </p>
      <fieldset className={styles.until}>
        <legend className="vh">Until when</legend>
        {SNOOZE_ENDS.map((end) => (
          <label key={end}>
            <input type="radio" name={`${id}-until`} checked={until === end} onChange={() => setUntil(end)} />
            <span>{UNTIL_WORDS[end]}</span>
          </label>
        ))}
      </fieldset>
      <div className={styles.actions}>
        <button type="submit" className={styles.press}>
          Snooze
        </button>
        <button type="button" className={styles.press} onClick={cancel}>
          Back
        </button>
      </div>
    </form>
  );
}
