import Link from "next/link";
import { useBoardFacts } from "../board-facts.ts";
import type { LookStore } from "../look/look-store.ts";
import { wallTime } from "../wall-time.ts";
import styles from "./panel.module.css";
import { type CourtChanges, useChanges } from "./use-changes.ts";

function Change({ courtNo, matchId, words }: CourtChanges) {
  const name = <b>Court {courtNo}</b>;
  return (
    <li data-testid={`change-${courtNo}`}>
      {matchId === null ? (
        name
      ) : (
        <Link className={styles.toCourt} href={`/court/${matchId}`} prefetch={false}>
          {name}
        </Link>
      )}
      <span>{words.join(", ")}</span>
    </li>
  );
}

/** What changed on each court since the person last looked, and the button that makes now the last look. */
export function ChangedPart({ look }: { readonly look: LookStore }) {
  const changes = useChanges(look);
  const { timeZone } = useBoardFacts();
  const last = look.get();
  if (!last) return null;
  const since = wallTime(last.atMs, timeZone);
  return (
    <section className={styles.part} aria-labelledby="changed">
      <div className={styles.partHead}>
        <h2 id="changed">Since {since}</h2>
        <button type="button" className={styles.press} onClick={look.markRead}>
          Mark as read
        </button>
      </div>
      {changes.length === 0 ? (
        <p data-testid="no-changes">Nothing has changed since you last looked.</p>
      ) : (
        <ul className={styles.changes}>
          {changes.map((change) => (
            <Change key={change.courtNo} {...change} />
          ))}
        </ul>
      )}
    </section>
  );
}
