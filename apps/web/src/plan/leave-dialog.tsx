import { useEffect, useRef } from "react";
import { ActionButton } from "../form/action-button.tsx";
import styles from "./plan.module.css";

interface LeaveDialogProps {
  readonly onStay: () => void;
  readonly onKeep: () => void;
  readonly onDrop: () => void;
}

/** Asks before a page with changes that are not saved is left. */
export function LeaveDialog({ onStay, onKeep, onDrop }: LeaveDialogProps) {
  const ref = useRef<HTMLDialogElement>(null);
  useEffect(() => ref.current?.showModal(), []);
  return (
    <dialog ref={ref} className={styles.dialog} aria-labelledby="leave" onCancel={onStay}>
      <h2 id="leave">Your changes are not saved</h2>
      <p>Kept changes wait on this page, in this tab, until you come back or close it.</p>
      <div className={styles.buttons}>
        <ActionButton primary label="Stay" onPress={onStay} />
        <ActionButton label="Leave, keep the changes" onPress={onKeep} />
        <ActionButton label="Leave, drop the changes" onPress={onDrop} />
      </div>
    </dialog>
  );
}
