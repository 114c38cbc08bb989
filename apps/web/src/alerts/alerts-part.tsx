import { freshnessOf } from "../board/freshness.ts";
import { useBoardMirror, useTicking } from "../board/use-board.ts";
import { AlertItem } from "./alert-item.tsx";
import styles from "./alerts.module.css";
import { AlertsState } from "./alerts-state.tsx";
import { BlindCourts } from "./blind-courts.tsx";
import { NoticeSwitchesPart } from "./notices/notice-switches-part.tsx";
import { useAlerts, useOpenCount, useRankedAlerts } from "./use-alerts.ts";
import { isWatched, noAlertsWords } from "./watched-courts.ts";

/** Beside an empty list, so that nobody takes it for a broken one. */
function NoAlerts() {
  const mirror = useBoardMirror();
  const watched = useTicking(() => {
    const courts = [...mirror.get().board.courts.values()];
    const now = mirror.serverNowMs();
    return courts.filter(({ tile, heard }) => isWatched(tile, freshnessOf(tile.state, heard, now).kind))
      .length;
  });
  return <p data-testid="no-alerts">{noAlertsWords(watched)}</p>;
}

function List() {
  const texts = useRankedAlerts();
  if (texts.length === 0) return <NoAlerts />;
  return (
    <ul className={styles.list} aria-label="Alerts">
      {texts.map((text) => (
        <li key={text}>
          <AlertItem text={text} />
        </li>
      ))}
    </ul>
  );
}

/** "2 open", or nothing. */
function OpenCount() {
  const open = useOpenCount();
  return open === 0 ? null : <span>{open} open</span>;
}

/** The alerts of the day, the gravest first, then the courts of which nothing is known. SPEC rules AS15 to AS19. */
export function AlertsPart() {
  const state = useAlerts((snapshot) => snapshot.state);
  return (
    <section className={styles.part} aria-labelledby="alerts" data-testid="alerts" data-connection={state}>
      <div className={styles.head}>
        <h2 id="alerts">Alerts</h2>
        {state === "refused" || state === "loading" ? null : <OpenCount />}
      </div>
      <AlertsState />
      {state === "live" || state === "stale" ? <List /> : null}
      <BlindCourts />
      <NoticeSwitchesPart />
    </section>
  );
}
