import type { EntryBody } from "@courtloom/match-log";
import { useState } from "react";
import styles from "./mend.module.css";
import type { Mending } from "./mend-context.ts";
import { previewChange } from "./preview-change.ts";

interface ConfirmChangeProps {
  readonly mending: Mending;
  /** What is to be done, in words. */
  readonly title: string;
  readonly bodies: readonly EntryBody[];
  readonly onDone: () => void;
  readonly onBack: () => void;
}

/** What a mend would change, before it is confirmed. Nothing is written until then. */
export const ConfirmChange = ({ mending, title, bodies, onDone, onBack }: ConfirmChangeProps) => {
  const [busy, setBusy] = useState(false);
  const change = previewChange(mending.view, bodies, mending);
  const confirm = async () => {
    setBusy(true);
    for (const body of bodies) await mending.chart(body);
    onDone();
  };
  return (
    <section className={styles.confirm} aria-label={title} data-testid="change">
      <h3>{title}</h3>
      <div role="status">
        {change.impossible ? (
          <p data-testid="impossible">{change.impossible}</p>
        ) : (
          <>
            <p data-testid="change-score">{change.score}</p>
            {change.also.map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
          </>
        )}
      </div>
      <div className={styles.choices}>
        {!change.impossible && (
          <button type="button" data-strong="true" disabled={busy} onClick={() => void confirm()}>
            Confirm
          </button>
        )}
        <button type="button" onClick={onBack}>
          Back
        </button>
      </div>
    </section>
  );
};
