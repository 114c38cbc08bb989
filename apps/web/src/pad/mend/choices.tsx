import styles from "./mend.module.css";

export interface Choice {
  readonly label: string;
  readonly onPress: () => void;
  readonly pressed?: boolean;
}

/** Buttons that belong together, under one name. */
export const Choices = ({
  label,
  choices,
}: {
  readonly label: string;
  readonly choices: readonly Choice[];
}) => (
  <fieldset className={styles.choices} aria-label={label}>
    {choices.map(({ label: text, onPress, pressed }) => (
      <button
        key={text}
        type="button"
        onClick={onPress}
        {...(pressed === undefined ? {} : { "aria-pressed": pressed })}
      >
        {text}
      </button>
    ))}
  </fieldset>
);
