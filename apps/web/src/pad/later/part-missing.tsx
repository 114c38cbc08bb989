import { useEffect, useRef } from "react";
import more from "../more.module.css";
import pad from "../pad.module.css";

interface PartMissingProps {
  readonly onAgain: () => void;
  readonly onClose: () => void;
}

/** A part that could not be fetched: what happened, and that charting goes on. */
export const PartMissing = ({ onAgain, onClose }: PartMissingProps) => {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} className={more.more} aria-label="Not on this phone" onClose={onClose}>
      <section data-testid="part-missing">
        <h3>Not on this phone</h3>
        <p>
          This page could not be fetched without a signal. Charting goes on. Try again where there is signal.
        </p>
      </section>
      <button type="button" className={pad.secondary} onClick={onAgain}>
        Try again
      </button>
      <button type="button" className={pad.primary} onClick={onClose}>
        Back to the court
      </button>
    </dialog>
  );
};
