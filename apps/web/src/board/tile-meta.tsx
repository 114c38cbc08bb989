import type { BoardCourt } from "@courtloom/sync";
import { coachingCaption, shortCaption } from "./coaching-caption.ts";
import styles from "./tile-meta.module.css";
import { chartistWords, secondsWords, unsentWords } from "./tile-words.ts";

/** Who charts and at which level, what is set aside or unsent, and what may be passed on. Staff only. */
export function TileMeta({ court, blind }: { readonly court: BoardCourt; readonly blind: boolean }) {
  const { staff, state, matchId } = court.tile;
  if (!staff || matchId === null || state === "empty") return null;
  const unsent = blind || state === "over" ? null : unsentWords(court.heard);
  // The caption is about figures: it stands where figures stand, while they could still be passed on.
  const caption = !blind && (state === "playing" || state === "suspended") ? coachingCaption(staff) : null;
  const aside = staff.setAsideCount === 0 ? null : `${staff.setAsideCount} set aside`;
  const notes = [secondsWords(staff.seconds), unsent, aside].filter((note) => note !== null).join(", ");
  return (
    <div className={styles.meta}>
      <p className={styles.chartist} data-testid="chartist">
        {chartistWords(staff.chartist, staff.level)}
      </p>
      {notes === "" ? null : (
        <p className={styles.notes} data-testid="notes">
          {notes}
        </p>
      )}
      {caption === null ? null : (
        <p className={styles.caption} data-testid="coaching">
          <span className={styles.full}>{caption}</span>
          <span className={styles.short} aria-hidden="true">
            {shortCaption(staff)}
          </span>
        </p>
      )}
    </div>
  );
}
