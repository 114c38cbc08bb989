import type { LineSpot } from "@courtloom/api";
import styles from "./line-map.module.css";
import { SpotButton } from "./spot-button.tsx";
import { spotName } from "./spot-name.ts";

/** From the net to the back, as the court lies before its player. */
const DEPTHS = ["insideServiceLine", "insideBaseline", "behindBaseline"] as const;

interface CourtMapProps {
  readonly playerName: string;
  readonly spots: readonly LineSpot[];
  readonly chosen: string | null;
  readonly choose: (name: string) => void;
}

/** The player's half of the court from above, net on top: one place for each depth and side. SPEC PF13. */
export function CourtMap({ playerName, spots, chosen, choose }: CourtMapProps) {
  return (
    <section className={styles.map} aria-label={`${playerName}'s half of the court, net on top`}>
      <p className={styles.net}>net</p>
      {DEPTHS.map((depth) => (
        <div key={depth} className={styles.row} data-depth={depth}>
          {spots
            .filter((spot) => spot.depth === depth)
            .map((spot) => (
              <SpotButton
                key={spot.side}
                spot={spot}
                isChosen={chosen === spotName(spot)}
                choose={() => choose(spotName(spot))}
              />
            ))}
        </div>
      ))}
      <div className={styles.sides} aria-hidden="true">
        <span>left side</span>
        <span>right side</span>
      </div>
    </section>
  );
}
