import { useState } from "react";
import styles from "./second.module.css";

interface BesideBarProps {
  /** Points that differ or are only beside the score. */
  readonly count: number;
  /** Who charted them, as far as known. */
  readonly names: readonly string[];
  readonly onOpen: () => void;
}

/** Tells whoever leads that points stand beside the score. Put away until there are more. */
export const BesideBar = ({ count, names, onOpen }: BesideBarProps) => {
  const [seen, setSeen] = useState(0);
  if (count <= seen) return null;
  const who = names.length > 0 ? ` of ${names.join(" and ")}` : "";
  return (
    <div className={styles.bar} role="status" data-testid="beside-score">
      <span>
        Beside the score: {count} {count === 1 ? "point" : "points"}
        {who} {count === 1 ? "differs" : "differ"}.
      </span>
      <button type="button" onClick={onOpen}>
        Compare
      </button>
      <button type="button" onClick={() => setSeen(count)}>
        Later
      </button>
    </div>
  );
};
