import type { ReactNode } from "react";
import styles from "./asks.module.css";
import { useShortcut } from "./keys/key-hints.ts";
import type { PadAction } from "./keys/key-map.ts";

export interface SegmentChoice {
  readonly id: string;
  readonly label: ReactNode;
  /** For screen readers, where the label alone is too short. */
  readonly hint?: string;
  readonly pressed?: boolean;
  /** What its key does, where it has one. */
  readonly action?: PadAction;
  readonly onPress: () => void;
}

interface SegmentProps {
  readonly label: string;
  readonly choices: readonly SegmentChoice[];
  /** Shown before the buttons: whose ball they are about. */
  readonly caption?: string;
}

/** A row of buttons that belong together; the chosen one is filled and says so to screen readers. */
export const Segment = ({ label, choices, caption }: SegmentProps) => {
  const shortcut = useShortcut();
  return (
    <fieldset className={styles.segment} aria-label={label}>
      {caption && (
        <span className={styles.caption} aria-hidden="true">
          {caption}
        </span>
      )}
      {choices.map(({ id, label: text, hint, pressed, action, onPress }) => (
        <button
          key={id}
          type="button"
          onClick={onPress}
          aria-label={hint}
          aria-keyshortcuts={shortcut(action)}
          {...(pressed === undefined ? {} : { "aria-pressed": pressed })}
        >
          {text}
        </button>
      ))}
    </fieldset>
  );
};
