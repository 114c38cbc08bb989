import Link from "next/link";
import { freshnessOf, silenceWords } from "../board/freshness.ts";
import { useBoardMirror, useFreshness, useTicking } from "../board/use-board.ts";
import { wallTime } from "../board/wall-time.ts";
import { Mark } from "../loom/mark.tsx";
import styles from "./alerts.module.css";
import { useAlertsPlace } from "./use-alerts.ts";

const BETWEEN = " ";

/** Ids of the courts in play whose phone is not heard for 90 s, in the order of their numbers. */
const useBlindCourts = (): readonly string[] => {
  const mirror = useBoardMirror();
  const ids = useTicking(() => {
    const { order, courts } = mirror.get().board;
    const now = mirror.serverNowMs();
    const isBlind = (id: string) => {
      const court = courts.get(id);
      return court !== undefined && freshnessOf(court.tile.state, court.heard, now).kind === "blind";
    };
    return order.filter(isBlind).join(BETWEEN);
  });
  return ids === "" ? [] : ids.split(BETWEEN);
};

function BlindCourt({ courtId }: { readonly courtId: string }) {
  const mirror = useBoardMirror();
  const { timeZone } = useAlertsPlace();
  const freshness = useFreshness(courtId);
  const court = mirror.get().board.courts.get(courtId);
  if (court === undefined || freshness.kind !== "blind") return null;
  const { courtNo, matchId } = court.tile;
  const silent =
    freshness.seconds === null ? "phone not heard" : `phone silent ${silenceWords(freshness.seconds)}`;
  const heardMs = court.heard?.heardMs ?? null;
  return (
    <li className={styles.blind} data-testid={`blind-${courtNo}`}>
      <h3 className={styles.where}>
        <span className={styles.shape}>
          <Mark name="blind" />
        </span>
        <span>Court {courtNo}</span>
      </h3>
      <p>
        <b>Blind,</b> {silent}.
      </p>
      <p className={styles.proof}>
        {heardMs === null ? "" : `Last word ${wallTime(heardMs, timeZone, true)}. `}Play may go on.
      </p>
      {matchId === null ? null : (
        <Link className={styles.points} href={`/court/${matchId}`} prefetch={false}>
          Open court {courtNo}
        </Link>
      )}
    </li>
  );
}

/** Courts of which nothing is known: no alert can come from there. SPEC rule AS18. */
export function BlindCourts() {
  const blind = useBlindCourts();
  if (blind.length === 0) return null;
  return (
    <ul className={styles.list} aria-label="Blind courts">
      {blind.map((courtId) => (
        <BlindCourt key={courtId} courtId={courtId} />
      ))}
    </ul>
  );
}
