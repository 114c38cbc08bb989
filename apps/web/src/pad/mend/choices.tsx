import styles from "./mend.module.css";

export interface Choice {
  readonly label: string;
  /** For screen readers, where the label alone is too short. */
  readonly hint?: string;
  readonly onPress: () => void;
  readonly pressed?: boolean;
}

interface ChoicesProps {
  readonly label: string;
  readonly choices: readonly Choice[];
  /** Shown above them. */
  readonly caption?: string;
}

/** Buttons that belong together, under one name. */
export const Choices = ({ label, choices, caption }: ChoicesProps) => (
  <fieldset className={styles.choices} aria-label={label}>
    {caption && <p className={styles.caption}>{caption}</p>}
    {choices.map(({ label: text, hint, onPress, pressed }) => (
      <button
        key={text}
        type="button"
        aria-label={hint}
        onClick={onPress}
        {...(pressed === undefined ? {} : { "aria-pressed": pressed })}
      >
        {text}
      </button>
    ))}
  </fieldset>
);
