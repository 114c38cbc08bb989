import { type ReactNode, useEffect, useRef } from "react";
import pad from "../pad.module.css";
import styles from "./mend.module.css";

interface MendSheetProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** A sheet over the court, closed by its button or Escape. */
export const MendSheet = ({ title, onClose, children }: MendSheetProps) => {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} className={styles.sheet} aria-label={title} onClose={onClose}>
      <h2>{title}</h2>
      <div className={styles.scroll}>{children}</div>
      <div className={styles.stick}>
        <button type="button" className={pad.primary} onClick={onClose}>
          Back to the court
        </button>
      </div>
    </dialog>
  );
};
