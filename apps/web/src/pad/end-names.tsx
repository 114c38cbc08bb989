import { type CourtMap, toScreen } from "./court-map.ts";
import styles from "./pad.module.css";

interface EndNamesProps {
  readonly map: CourtMap;
  /** At the near or left end. */
  readonly first: string;
  /** At the far or right end. */
  readonly second: string;
}

const PLACES = {
  behind: { first: { right: -250, away: -1_370 }, second: { right: -300, away: 1_390 } },
  side: { first: { right: -900, away: -520 }, second: { right: 900, away: -520 } },
} as const;

/** Who is at which end, written on the ground behind the baselines. */
export const EndNames = ({ map, first, second }: EndNamesProps) => {
  const near = toScreen(map, PLACES[map.seat].first);
  const far = toScreen(map, PLACES[map.seat].second);
  return (
    <>
      <text className={styles.endName} x={near.x} y={near.y + 6} data-testid="end-first">
        {first}
      </text>
      <text className={styles.endName} x={far.x} y={far.y + 6} data-testid="end-second">
        {second}
      </text>
    </>
  );
};
