import type { Tile } from "@courtloom/protocol";
import { Mark } from "../loom/mark.tsx";
import styles from "./tile.module.css";
import { flagOf } from "./tile-words.ts";
import { useFreshness, useIsStale } from "./use-board.ts";

/** A court's state in shape and word; nothing for a court in play that is heard. */
export function TileFlag({ tile }: { readonly tile: Tile }) {
  const freshness = useFreshness(tile.courtId);
  const stale = useIsStale();
  const flag = flagOf(tile, stale ? { kind: "none" } : freshness);
  if (flag === null) return null;
  return (
    <p className={styles.flag} data-testid="flag">
      <Mark name={flag.mark} />
      <span>
        <b>{flag.word}</b>{" "}
        {flag.detail === null ? null : <span className={styles.detail}>{flag.detail}</span>}
      </span>
    </p>
  );
}
