import { ChangeMark } from "../loom/change-mark.tsx";
import { nextChangeShort, nextChangeWords } from "./next-change-words.ts";
import styles from "./tile-ends.module.css";
import { useBoardMirror, useCourtTicking } from "./use-board.ts";

const BETWEEN = "|";

/** How close the court is to a change of ends, in full or beside a mark; nothing on a wall, where it is not sent. */
export function TileEndsLine({ courtId }: { readonly courtId: string }) {
  const mirror = useBoardMirror();
  const words = useCourtTicking(courtId, () => {
    const tile = mirror.get().board.courts.get(courtId)?.tile;
    if (tile?.state !== "playing") return "";
    const [ends, now] = [tile.staff?.ends, mirror.serverNowMs()];
    return [nextChangeWords(ends, now) ?? "", nextChangeShort(ends, now) ?? ""].join(BETWEEN);
  });
  const [full, short] = words.split(BETWEEN);
  if (!full) return null;
  return (
    <p className={styles.ends} data-testid="ends">
      <span className={styles.full}>{full}</span>
      <span className={styles.short} aria-hidden="true">
        <ChangeMark /> {short}
      </span>
    </p>
  );
}
