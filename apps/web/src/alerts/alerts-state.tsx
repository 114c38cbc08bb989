import { REFUSAL_WORDS } from "../board/refusal-words.ts";
import { wallTime } from "../board/wall-time.ts";
import styles from "./alerts.module.css";
import { useAlerts, useAlertsPlace } from "./use-alerts.ts";

function Refused() {
  const refusal = useAlerts((snapshot) => snapshot.refusal);
  return (
    <p data-testid="alerts-refused">Alerts are not shown. {refusal === null ? "" : REFUSAL_WORDS[refusal]}</p>
  );
}

function AsKnown() {
  const { timeZone } = useAlertsPlace();
  const heardMs = useAlerts(({ lastHeardMs }) => lastHeardMs);
  return (
    <p className={styles.past} data-testid="alerts-stale">
      <b>As known{heardMs === null ? "" : ` at ${wallTime(heardMs, timeZone, true)}`}.</b> No connection. What
      you do here is sent later.
    </p>
  );
}

/** Why the alerts below are not all there is: they are being read, refused, or the past. Nothing while they are live. SPEC rule AS19. */
export function AlertsState() {
  const state = useAlerts((snapshot) => snapshot.state);
  if (state === "loading") return <p data-testid="alerts-loading">Reading the alerts.</p>;
  if (state === "refused") return <Refused />;
  return state === "stale" ? <AsKnown /> : null;
}
