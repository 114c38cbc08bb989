import type { PlayerHistory } from "@courtloom/api";
import { matches, points } from "./history-words.ts";
import styles from "./players.module.css";

/** What the figures stand on, what is left out of them, and how a shuttle is read. SPEC PF9. */
export function StandingPart({ history }: { readonly history: PlayerHistory }) {
  const { matches: used, matchesInAll, onlyLatest, unreadable } = history;
  const pointsUsed = used.reduce((sum, match) => sum + match.pointsUsed, 0);
  const inThem = used.reduce((sum, match) => sum + match.points, 0);
  const lookedAt = onlyLatest === null ? matchesInAll : Math.min(onlyLatest, matchesInAll);
  const unfit = Math.max(0, lookedAt - used.length - unreadable);
  return (
    <div className={styles.stand}>
      <p data-testid="standing">
        <b>{matches(used.length)}</b>, <b>{points(pointsUsed)}</b>.
      </p>
      <ul className={styles.leftOut}>
        {unfit > 0 ? <li>{matches(unfit)} left out: not of the filters.</li> : null}
        {inThem > pointsUsed ? <li>{points(inThem - pointsUsed)} left out: not of the filters.</li> : null}
        {onlyLatest !== null && matchesInAll > onlyLatest ? (
          <li>
            {matches(matchesInAll - onlyLatest)} left out: only the latest {onlyLatest} are read.
          </li>
        ) : null}
        {unreadable > 0 ? <li>{matches(unreadable)} left out: the log cannot be read any more.</li> : null}
      </ul>
      <p className={styles.key}>
        Scale from 0 to 10 in 10. Bead: the count. Its taper: where the rate most likely lies (95 %). Woven
        band: what is usual for one match.
      </p>
    </div>
  );
}
