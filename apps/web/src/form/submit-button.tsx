import styles from "./form.module.css";

interface SubmitButtonProps {
  readonly pending: boolean;
  readonly label: string;
  /** Said while it is under way, such as "Signing in". */
  readonly pendingLabel: string;
}

/** Sends a form; says what is under way and cannot be pressed twice. */
export function SubmitButton({ pending, label, pendingLabel }: SubmitButtonProps) {
  return (
    <button type="submit" className={`${styles.button} ${styles.primary}`} disabled={pending}>
      {pending ? pendingLabel : label}
    </button>
  );
}
