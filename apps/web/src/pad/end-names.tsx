import type { Seat } from "@courtloom/tennis";
import styles from "./court.module.css";

interface EndNamesProps {
  readonly seat: Seat;
  readonly width: number;
  readonly height: number;
  /** At the near or left end. */
  readonly first: string;
  /** At the far or right end. */
  readonly second: string;
}

/** Who is at which end, in the corners where no ball is drawn. */
export const EndNames = ({ seat, width, height, first, second }: EndNamesProps) => {
  const behind = seat === "behind";
  return (
    <>
      <text className={styles.endName} x={10} y={height - 12} data-testid="end-first">
        {first}
      </text>
      <text
        className={styles.endName}
        x={behind ? 10 : width - 10}
        y={behind ? 20 : height - 12}
        data-anchor={behind ? "start" : "end"}
        data-testid="end-second"
      >
        {second}
      </text>
    </>
  );
};
