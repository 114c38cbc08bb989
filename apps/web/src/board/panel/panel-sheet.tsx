import { useEffect, useRef } from "react";
import type { BoardTools } from "../board-tools.ts";
import { useChoice } from "../choice/use-choice.ts";
import styles from "./panel.module.css";
import { PanelBody } from "./panel-body.tsx";
import { FILTER_WORDS } from "./show-part.tsx";
import { useChanges } from "./use-changes.ts";

function Sheet({ tools, onClose }: { readonly tools: BoardTools; readonly onClose: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog
      ref={dialog}
      className={styles.sheet}
      aria-label="Alerts, changes and what to show"
      onClose={onClose}
    >
      <div className={styles.sheetHead}>
        <button type="button" className={styles.press} onClick={() => dialog.current?.close()}>
          Back to the courts
        </button>
      </div>
      <PanelBody tools={tools} />
    </dialog>
  );
}

export interface PanelSheetProps {
  readonly tools: BoardTools;
  readonly open: boolean;
  readonly setOpen: (open: boolean) => void;
}

/** The panel where there is no room beside the courts: a button that says what is shown and how much changed. */
export function PanelSheet({ tools, open, setOpen }: PanelSheetProps) {
  const { filter } = useChoice();
  const changed = useChanges(tools.look).length;
  return (
    <>
      <button
        type="button"
        className={styles.opener}
        aria-haspopup="dialog"
        data-testid="open-panel"
        onClick={() => setOpen(true)}
      >
        <b>{FILTER_WORDS[filter]}</b> <span>{changed} changed</span>
      </button>
      {open ? <Sheet tools={tools} onClose={() => setOpen(false)} /> : null}
    </>
  );
}
