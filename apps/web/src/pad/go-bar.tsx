import styles from "./asks.module.css";
import { useShortcut } from "./keys/key-hints.ts";
import type { PadHand } from "./pad-settings.ts";

interface GoBarProps {
  readonly canUndo: boolean;
  readonly busy: boolean;
  /** Done is under this hand's thumb, undo at the far end of its reach. */
  readonly hand: PadHand;
  /** `undefined` where there is no Done: every touch counts by itself. */
  readonly done: { readonly next: string | undefined } | undefined;
  readonly onUndo: () => void;
  readonly onDone: () => void;
  readonly onMore: () => void;
}

const UndoArrow = () => (
  <svg viewBox="0 0 24 24" width="20" height="20" aria-hidden="true">
    <path d="M9 5L4 10l5 5M4 10h10a5 5 0 0 1 0 10h-3" fill="none" stroke="currentColor" strokeWidth="2.5" />
  </svg>
);

/** The bottom row, under the thumb, always in the same place: back, more, on. Done says the next score. */
export const GoBar = ({ canUndo, busy, hand, done, onUndo, onDone, onMore }: GoBarProps) => {
  const shortcut = useShortcut();
  const row = [
    <button
      key="undo"
      type="button"
      onClick={onUndo}
      disabled={!canUndo || busy}
      aria-keyshortcuts={shortcut("undo")}
      data-testid="undo"
    >
      <UndoArrow />
      Undo
    </button>,
    <button key="more" type="button" onClick={onMore} aria-keyshortcuts={shortcut("more")} data-testid="more">
      More
    </button>,
    done && (
      <button
        key="done"
        type="button"
        className={styles.done}
        onClick={onDone}
        disabled={busy || done.next === undefined}
        aria-keyshortcuts={shortcut("done")}
        data-testid="done"
      >
        <b>Done</b>
        <span>{done.next ?? "when it is said who won"}</span>
      </button>
    ),
  ];
  return (
    <div className={styles.go} data-has-done={done !== undefined} data-hand={hand}>
      {hand === "left" ? row.toReversed() : row}
    </div>
  );
};
