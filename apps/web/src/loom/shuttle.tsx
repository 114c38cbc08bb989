import { Cloth } from "./cloth.tsx";
import styles from "./loom.module.css";
import { rateSentence, type ShownRate, type ShownUsual } from "./rate-words.ts";
import { type ShuttleDrawing, shuttleDrawing } from "./shuttle-geometry.ts";

/** The dye of a shuttle: ink for a count as such, or the direction that it counts. */
export type Dye = "ink" | "line" | "cross" | "middle";

export interface ShuttleProps {
  /** What is counted, for the accessible name: "Line balls missed, Noor V.". */
  readonly what: string;
  readonly rate: ShownRate;
  readonly usual?: ShownUsual | undefined;
  readonly dye?: Dye;
  readonly size?: "small" | "large";
}

/** Loose beads, one per ball: those counted are filled. */
function Beads({ filled, hollow }: { readonly filled: number; readonly hollow: number }) {
  return (
    <>
      {Array.from({ length: filled }, (_, i) => `filled ${i}`).map((key) => (
        <i key={key} className={styles.beadFilled} />
      ))}
      {Array.from({ length: hollow }, (_, i) => `hollow ${i}`).map((key) => (
        <i key={key} className={styles.beadHollow} />
      ))}
    </>
  );
}

function Taper({ drawing }: { readonly drawing: Extract<ShuttleDrawing, { kind: "shuttle" }> }) {
  return (
    <>
      <svg
        x={`${drawing.taper.from}%`}
        width={`${drawing.taper.width}%`}
        height="100%"
        viewBox="0 0 100 100"
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        <path className={styles.taper} d={drawing.path} />
      </svg>
      <circle className={styles.bead} cx={`${drawing.bead}%`} cy="50%" />
    </>
  );
}

/**
 * Today's count on the fixed scale from 0 to 10 in 10: a bead at the count, tapering to the ends of the
 * 95 % interval, over the cloth of what is usual. Under 5: loose beads, no cloth, no scale. None: nothing.
 */
export function Shuttle({ what, rate, usual, dye = "ink", size = "large" }: ShuttleProps) {
  const drawing = shuttleDrawing(rate);
  const name = rateSentence(what, rate, usual);
  const dress = `${styles.thread} ${styles[size]} ${styles[dye]}`;
  if (drawing.kind === "none") return null;
  if (drawing.kind === "beads") {
    return (
      <span className={`${dress} ${styles.beads}`} role="img" aria-label={name}>
        <Beads {...drawing} />
      </span>
    );
  }
  return (
    <svg className={dress} role="img" aria-label={name}>
      <line className={styles.rail} x1="0" x2="100%" y1="50%" y2="50%" />
      <line className={styles.rail} x1="0" x2="0" y1="32%" y2="68%" />
      <line className={styles.rail} x1="100%" x2="100%" y1="32%" y2="68%" />
      {usual ? <Cloth usual={usual} /> : null}
      <Taper drawing={drawing} />
    </svg>
  );
}
