import { nextChangeWords } from "./next-change-words.ts";
import styles from "./tile-ends.module.css";
import { useBoardMirror, useCourtTicking } from "./use-board.ts";

/** How close the court is to a change of ends; nothing on a wall, where it is not sent. */
export function TileEndsLine({ courtId }: { readonly courtId: string }) {
  const mirror = useBoardMirror();
  const words = useCourtTicking(courtId, () => {
    const tile = mirror.get().board.courts.get(courtId)?.tile;
    if (tile?.state !== "playing") return "";
    return nextChangeWords(tile.staff?.ends, mirror.serverNowMs()) ?? "";
  });
  if (words === "") return null;
  return (
    <p className={styles.ends} data-testid="ends">
      {words}
    </p>
  );
}
