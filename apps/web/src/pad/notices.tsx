import styles from "./pad.module.css";
import type { PadNotice } from "./pad-notices.ts";
import type { RefusalHelp } from "./refusal-words.ts";

interface NoticesProps {
  readonly notices: readonly PadNotice[];
  readonly onHelp: (help: RefusalHelp) => void;
  /** Given where a notice may be put away. */
  readonly onDismiss?: () => void;
}

const HELP_LABELS: Readonly<Record<Exclude<RefusalHelp, "none">, string>> = {
  enterCode: "Enter code",
  tryAgain: "Try again",
  reload: "Load again",
};

/** Sentences about the way to the server, with the one thing to do. */
export const Notices = ({ notices, onHelp, onDismiss }: NoticesProps) => (
  <div className={styles.notices} role="status">
    {notices.map(({ id, text, help }) => (
      <p key={id} className={styles.notice} data-testid={`notice-${id}`}>
        <span>{text}</span>
        {help !== "none" && (
          <button type="button" onClick={() => onHelp(help)}>
            {HELP_LABELS[help]}
          </button>
        )}
        {onDismiss && (
          <button type="button" onClick={onDismiss}>
            OK
          </button>
        )}
      </p>
    ))}
  </div>
);
