import type { ByPlayer, Side } from "@courtloom/core";
import type { EndSeen } from "@courtloom/tennis";
import styles from "./court.module.css";
import { useShortcut } from "./keys/key-hints.ts";
import { sideAtFirstEnd } from "./shown-ends.ts";
import { Strip, type StripText } from "./strip.tsx";

interface ScoreOnlyProps {
  readonly names: ByPlayer<string>;
  readonly endOfA: EndSeen;
  readonly idle: StripText;
  /** The score that each side's point would make. */
  readonly next: ByPlayer<string>;
  readonly busy: boolean;
  readonly onPoint: (winner: Side) => void;
}

/** Score only: one touch per point for whoever won it; the player at the far end is the button above. */
export const ScoreOnly = ({ names, endOfA, idle, next, busy, onPoint }: ScoreOnlyProps) => {
  const shortcut = useShortcut();
  const first = sideAtFirstEnd(endOfA);
  const behind = endOfA === "near" || endOfA === "far";
  const order = behind
    ? ([first === "A" ? "B" : "A", first] as const)
    : ([first, first === "A" ? "B" : "A"] as const);
  return (
    <div className={styles.scoreOnly} data-seat={behind ? "behind" : "side"}>
      <Strip text={idle} look={false} />
      {order.map((side) => (
        <button
          key={side}
          type="button"
          disabled={busy}
          onClick={() => onPoint(side)}
          aria-keyshortcuts={shortcut(side === "A" ? "pointA" : "pointB")}
          data-testid={`point-${side}`}
        >
          <b>Point {names[side]}</b>
          <span>{next[side]}</span>
        </button>
      ))}
    </div>
  );
};
