import styles from "./loom.module.css";

const FRAY_LEFT = "M-2 -1.5c8 0 10-8 17-8M-2 0c8 0 12 1 21 0M-2 1.5c8 0 9 9 15 9";
const FRAY_RIGHT = "M2 -1.5c-8 0-9-7-15-9M2 0c-8 0-12-1-21 1M2 1.5c-8 0-10 8-17 7";

/** A thread cut through: stands where figures would, while nothing is known. The sentence beside it says why. */
export function CutThread() {
  return (
    <svg className={styles.cut} aria-hidden="true" data-part="cut-thread">
      <line x1="0" x2="41%" y1="50%" y2="50%" />
      <line x1="59%" x2="100%" y1="50%" y2="50%" />
      <svg x="41%" y="50%" overflow="visible" aria-hidden="true">
        <path d={FRAY_LEFT} />
      </svg>
      <svg x="59%" y="50%" overflow="visible" aria-hidden="true">
        <path d={FRAY_RIGHT} />
      </svg>
    </svg>
  );
}
