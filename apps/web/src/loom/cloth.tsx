import { useId } from "react";
import styles from "./loom.module.css";
import type { ShownUsual } from "./rate-words.ts";
import { spanOf } from "./shuttle-geometry.ts";

/** The woven band: what is usual. Lies inside a shuttle's drawing, on the same scale; a line marks the mean. */
export function Cloth({ usual }: { readonly usual: ShownUsual }) {
  const weave = `weave${useId()}`;
  const span = spanOf(usual.low, usual.high);
  const mean = `${spanOf(usual.mean, 1).from}%`;
  return (
    <g data-part="cloth">
      <defs>
        <pattern id={weave} width="8" height="8" patternUnits="userSpaceOnUse">
          <rect width="8" height="8" className={styles.clothGround} />
          <path d="M0 1h4M0 3h4M5 4v4M7 4v4" className={styles.clothThread} />
        </pattern>
      </defs>
      <rect x={`${span.from}%`} width={`${span.width}%`} y="10%" height="80%" fill={`url(#${weave})`} />
      <line className={styles.usual} x1={mean} x2={mean} y1="0" y2="100%" />
    </g>
  );
}
