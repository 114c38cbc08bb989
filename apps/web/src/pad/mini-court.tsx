import type { Shot } from "@courtloom/match-log";
import type { Direction, Seat, SeenPoint } from "@courtloom/tennis";
import styles from "./asks.module.css";

interface MiniCourtProps {
  readonly seat: Seat;
  readonly shot: Shot;
  readonly direction: Direction | undefined;
}

/** Centimetres of ground shown across and along. */
const ACROSS = 1_300;
const ALONG = 3_200;

/** One ball on a court the size of a fingernail. Pictures only: the chip's words say the same. */
export const MiniCourt = ({ seat, shot, direction }: MiniCourtProps) => {
  const behind = seat === "behind";
  const [width, height] = behind ? [20, 40] : [40, 20];
  const spanX = behind ? ACROSS : ALONG;
  const spanY = behind ? ALONG : ACROSS;
  const x = (cm: number) => width / 2 + (cm / spanX) * width;
  const y = (cm: number) => height / 2 - (cm / spanY) * height;
  const at = ({ right, away }: SeenPoint) => `${x(right).toFixed(1)} ${y(away).toFixed(1)}`;
  const halfX = behind ? 411 : 1_189;
  const halfY = behind ? 1_189 : 411;
  return (
    <svg
      className={styles.mini}
      width={width}
      height={height}
      aria-hidden="true"
      data-direction={direction ?? "none"}
    >
      <rect x={x(-halfX)} y={y(halfY)} width={x(halfX) - x(-halfX)} height={y(-halfY) - y(halfY)} />
      <path d={behind ? `M0 ${height / 2}h${width}` : `M${width / 2} 0v${height}`} />
      {shot.to && <path className={styles.miniThread} d={`M${at(shot.from)}L${at(shot.to)}`} />}
      <circle cx={x(shot.from.right)} cy={y(shot.from.away)} r={3.5} />
    </svg>
  );
};
