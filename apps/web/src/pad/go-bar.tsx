import styles from "./pad.module.css";

interface GoBarProps {
  readonly canUndo: boolean;
  readonly busy: boolean;
  /** What Done would make of the score; absent while the point is not finished. */
  readonly done: string | undefined;
  readonly onUndo: () => void;
  readonly onDone: () => void;
  readonly onMore: () => void;
}

/** The bottom row, under the thumb: back, and on. */
export const GoBar = ({ canUndo, busy, done, onUndo, onDone, onMore }: GoBarProps) => (
  <div className={styles.go}>
    <button type="button" onClick={onUndo} disabled={!canUndo || busy} data-testid="undo">
      <svg viewBox="0 0 24 24" width="20" height="20" aria-hidden="true">
        <path
          d="M9 5L4 10l5 5M4 10h10a5 5 0 0 1 0 10h-3"
          fill="none"
          stroke="currentColor"
          strokeWidth="2.5"
        />
      </svg>
      Undo
    </button>
    {done === undefined ? (
      <button type="button" onClick={onMore} data-testid="more">
        More
      </button>
    ) : (
      <button type="button" className={styles.done} onClick={onDone} disabled={busy} data-testid="done">
        <b>Done</b>
        <span>{done}</span>
      </button>
    )}
  </div>
);
