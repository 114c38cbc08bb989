import type { ByPlayer } from "@courtloom/core";
import type { Seat } from "@courtloom/tennis";
import { useEffect, useRef, useState } from "react";
import more from "../more.module.css";
import pad from "../pad.module.css";
import { COURT_CELLS } from "./court-cells.ts";
import { KEY_MAP, KEY_PARTS, type PadKey } from "./key-map.ts";
import { keyName, shownKey } from "./key-names.ts";
import styles from "./keys.module.css";

/** Some browsers tell what this keyboard has printed on its keys. */
interface KeyboardOfBrowser {
  readonly getLayoutMap?: () => Promise<ReadonlyMap<string, string>>;
}

const usePrinted = (): ReadonlyMap<string, string> | undefined => {
  const [printed, setPrinted] = useState<ReadonlyMap<string, string>>();
  useEffect(() => {
    let isWanted = true;
    const { keyboard } = navigator as Navigator & { readonly keyboard?: KeyboardOfBrowser };
    const read = async () => {
      try {
        const layout = await keyboard?.getLayoutMap?.();
        if (isWanted) setPrinted(layout);
      } catch {
        // Not told to a page in a frame: the names of a common keyboard stay.
        return;
      }
    };
    void read();
    return () => {
      isWanted = false;
    };
  }, []);
  return printed;
};

interface KeyMapSheetProps {
  readonly names: ByPlayer<string>;
  readonly seat: Seat;
  /** Whether anything is drawn at this level. */
  readonly draws: boolean;
  readonly onClose: () => void;
}

const withNames = (label: string, names: ByPlayer<string>): string =>
  label.replace(/\b[AB]\b/g, (side) => (side === "A" ? names.A : names.B));

const HALVES = {
  behind: { first: "Near half", second: "Far half" },
  side: { first: "Left half", second: "Right half" },
} as const;

const CourtKeys = ({ seat, printed }: { seat: Seat; printed: ReadonlyMap<string, string> | undefined }) => (
  <section>
    <h3>Draw a ball</h3>
    <p>
      First where it was struck, then where it went. The letters lie as the court does on the screen. The same
      letter twice: kept, cross-court or middle.
    </p>
    <div className={styles.halves}>
      {(["first", "second"] as const).map((half) => (
        <figure key={half}>
          <figcaption>{HALVES[seat][half]}</figcaption>
          <div className={styles.block}>
            {COURT_CELLS.filter((cell) => cell.half === half).map(({ code }) => (
              <kbd key={code}>{keyName(code, printed)}</kbd>
            ))}
          </div>
        </figure>
      ))}
    </div>
  </section>
);

const KeyList = ({
  keys,
  names,
  printed,
}: {
  readonly keys: readonly PadKey[];
  readonly names: ByPlayer<string>;
  readonly printed: ReadonlyMap<string, string> | undefined;
}) => (
  <ul className={styles.list}>
    {keys.map((key) => (
      <li key={key.action}>
        <kbd>{shownKey(key, printed)}</kbd> {withNames(key.label, names)}
      </li>
    ))}
  </ul>
);

/** Every key of the pad, from the table that handles them. */
export const KeyMapSheet = ({ names, seat, draws, onClose }: KeyMapSheetProps) => {
  const dialog = useRef<HTMLDialogElement>(null);
  const printed = usePrinted();
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} className={`${more.more} ${styles.keys}`} aria-label="Keys" onClose={onClose}>
      <h2>Keys</h2>
      <p>
        They act while no button or field has the focus. Esc leads back from a button. They can be switched
        off in More.
      </p>
      <div className={styles.parts}>
        {draws && <CourtKeys seat={seat} printed={printed} />}
        {KEY_PARTS.filter((part) => draws || part === "Always").map((part) => (
          <section key={part}>
            <h3>{part}</h3>
            <KeyList keys={KEY_MAP.filter((key) => key.part === part)} names={names} printed={printed} />
          </section>
        ))}
      </div>
      <div className={more.stick}>
        <button type="button" className={pad.primary} onClick={() => dialog.current?.close()}>
          Back to the court
        </button>
      </div>
    </dialog>
  );
};
