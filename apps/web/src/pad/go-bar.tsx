import styles from "./asks.module.css";

interface GoBarProps {
  readonly canUndo: boolean;
  readonly busy: boolean;
  /** `undefined` where there is no Done: every touch counts by itself. */
  readonly done: { readonly next: string | undefined } | undefined;
  readonly onUndo: () => void;
  readonly onDone: () => void;
  readonly onMore: () => void;
}

/** The bottom row, under the thumb, always in the same place: back, more, on. Done says the next score. */
export const GoBar = ({ canUndo, busy, done, onUndo, onDone, onMore }: GoBarProps) => (
  <div className={styles.go} data-has-done={done !== undefined}>
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
    <button type="button" onClick={onMore} data-testid="more">
      More
    </button>
    {done && (
      <button
        type="button"
        className={styles.done}
        onClick={onDone}
        disabled={busy || done.next === undefined}
        data-testid="done"
      >
        <b>Done</b>
        <span>{done.next ?? "when it is said who won"}</span>
      </button>
    )}
  </div>
);
