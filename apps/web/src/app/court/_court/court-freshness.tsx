import type { BoardCourt } from "@courtloom/sync";
import { TileFlag } from "../../../board/tile-flag.tsx";
import { TileFreshness } from "../../../board/tile-freshness.tsx";
import { blindSentence, chartistWords, secondsWords, unsentWords } from "../../../board/tile-words.ts";
import { useFreshnessKind } from "../../../board/use-board.ts";
import { wallTime } from "../../../board/wall-time.ts";
import styles from "./court.module.css";

/** Who charts, when the phone was last heard, and what to do when it is silent. */
export function CourtFreshness({
  court,
  timeZone,
}: {
  readonly court: BoardCourt;
  readonly timeZone: string;
}) {
  const { tile, heard } = court;
  const isBlind = useFreshnessKind(tile.courtId) === "blind";
  const chartist = tile.staff?.chartist ?? null;
  const heardAt = heard?.heardMs == null ? null : wallTime(heard.heardMs, timeZone);
  const seconds = secondsWords(tile.staff?.seconds);
  const unsent = unsentWords(heard);
  return (
    <div className={styles.freshness} data-blind={isBlind || undefined}>
      {tile.staff ? <p data-testid="chartist">{chartistWords(chartist, tile.staff.level)}</p> : null}
      <TileFreshness courtId={tile.courtId} />
      {isBlind ? <TileFlag tile={tile} /> : null}
      {isBlind ? <p className={styles.blind}>{blindSentence(heardAt, chartist)}</p> : null}
      {seconds === null ? null : <p data-testid="seconds">{seconds}</p>}
      {unsent === null ? null : <p>{unsent}</p>}
    </div>
  );
}
