import type { Tile } from "@courtloom/protocol";
import { useStandingAlert } from "../alerts/use-alerts.ts";
import { Mark } from "../loom/mark.tsx";
import { useBoardFacts } from "./board-facts.ts";
import styles from "./tile.module.css";
import { alertFlagOf, flagOf } from "./tile-words.ts";
import { useFreshness } from "./use-board.ts";

/** A court's state in shape and word; nothing for a court in play that is heard. */
export function TileFlag({ tile, quiet = false }: { readonly tile: Tile; readonly quiet?: boolean }) {
  const freshness = useFreshness(tile.courtId);
  const { stale } = useBoardFacts();
  const standing = useStandingAlert(tile.matchId);
  const flag =
    flagOf(tile, stale ? { kind: "none" } : freshness) ??
    (stale || quiet ? null : alertFlagOf(tile, standing));
  if (flag === null) return null;
  return (
    <p className={styles.flag} data-testid="flag">
      <Mark name={flag.mark} />
      <span className={styles.words}>
        <b>{flag.word}</b>{" "}
        {flag.detail === null ? null : <span className={styles.detail}>{flag.detail}</span>}
      </span>
    </p>
  );
}
