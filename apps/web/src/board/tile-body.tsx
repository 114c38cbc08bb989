import type { BoardCourt } from "@courtloom/sync";
import { CutThread } from "../loom/cut-thread.tsx";
import { useBoardFacts } from "./board-facts.ts";
import { TileFiguresPart } from "./tile-figures.tsx";
import styles from "./tile-meta.module.css";
import { blindSentence, unsentWords } from "./tile-words.ts";
import { wallTime } from "./wall-time.ts";

/** Below the score: figures, or the cut thread and a sentence where figures would look live and are not. */
export function TileBody({ court, blind }: { readonly court: BoardCourt; readonly blind: boolean }) {
  const { tile, heard } = court;
  const { stale, timeZone } = useBoardFacts();
  if (blind) {
    const heardAt = heard?.heardMs == null ? null : wallTime(heard.heardMs, timeZone);
    const unsent = unsentWords(heard);
    return (
      <div className={styles.blindBody}>
        <div className={styles.cut}>
          <CutThread />
        </div>
        <p className={styles.note} data-testid="blind-note">
          {blindSentence(heardAt, stale ? null : (tile.staff?.chartist ?? null))}
          {tile.staff && unsent ? ` ${unsent}.` : null}
        </p>
      </div>
    );
  }
  const played = tile.state === "playing" || tile.state === "suspended" || tile.state === "over";
  if (!tile.staff || !tile.names || !played) return null;
  return <TileFiguresPart staff={tile.staff} names={tile.names} own={tile.own} />;
}
