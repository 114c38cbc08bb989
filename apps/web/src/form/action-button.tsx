import styles from "./form.module.css";

interface ActionButtonProps {
  readonly label: string;
  readonly pending?: boolean;
  readonly pendingLabel?: string;
  readonly primary?: boolean;
  /** Read out after the label where several buttons say the same, such as "of court 3". */
  readonly about?: string;
  readonly onPress: () => void;
}

/** Does something at once, outside a form. */
export function ActionButton(props: ActionButtonProps) {
  const { label, pending = false, pendingLabel = label, primary = false, about, onPress } = props;
  return (
    <button
      type="button"
      className={primary ? `${styles.button} ${styles.primary}` : styles.button}
      disabled={pending}
      onClick={onPress}
    >
      {pending ? pendingLabel : label}
      {about ? <span className="vh"> {about}</span> : null}
    </button>
  );
}
