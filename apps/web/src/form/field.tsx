import { type ReactNode, useId } from "react";
import styles from "./form.module.css";

export interface ControlProps {
  readonly id: string;
  readonly className: string | undefined;
  readonly "aria-describedby": string | undefined;
  readonly "aria-invalid": true | undefined;
}

interface FieldProps {
  readonly label: string;
  readonly hint?: string | undefined;
  /** What is wrong with it and what to do; absent when nothing is. */
  readonly error?: string | undefined;
  /** Draws the control with these properties, which tie it to its texts. */
  readonly children: (control: ControlProps) => ReactNode;
}

/** A control with its label, its hint and its error, read out together. */
export function Field({ label, hint, error, children }: FieldProps) {
  const id = useId();
  const described = [hint && `${id}-hint`, error && `${id}-error`].filter(Boolean).join(" ");
  return (
    <div className={styles.field}>
      <label className={styles.label} htmlFor={id}>
        {label}
      </label>
      {hint ? (
        <p className={styles.hint} id={`${id}-hint`}>
          {hint}
        </p>
      ) : null}
      {children({
        id,
        className: styles.input,
        "aria-describedby": described || undefined,
        "aria-invalid": error ? true : undefined,
      })}
      {error ? (
        <p className={styles.error} id={`${id}-error`}>
          {error}
        </p>
      ) : null}
    </div>
  );
}
