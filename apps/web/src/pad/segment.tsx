import type { ReactNode } from "react";
import styles from "./pad.module.css";

export interface SegmentChoice {
  readonly id: string;
  readonly label: ReactNode;
  readonly pressed?: boolean;
  readonly onPress: () => void;
}

interface SegmentProps {
  readonly label: string;
  readonly choices: readonly SegmentChoice[];
}

/** A row of buttons that belong together; the chosen one is filled and says so to screen readers. */
export const Segment = ({ label, choices }: SegmentProps) => (
  <fieldset className={styles.segment} aria-label={label}>
    {choices.map(({ id, label: text, pressed, onPress }) => (
      <button
        key={id}
        type="button"
        onClick={onPress}
        {...(pressed === undefined ? {} : { "aria-pressed": pressed })}
      >
        {text}
      </button>
    ))}
  </fieldset>
);
