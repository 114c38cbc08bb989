import { Mark } from "../loom/mark.tsx";
import styles from "./board.module.css";
import { wallTime } from "./wall-time.ts";

/** What is shown is the past: since when, and what the page does about it. */
export function LostBanner({
  lastHeardMs,
  timeZone,
  what,
}: {
  readonly lastHeardMs: number | null;
  readonly timeZone: string;
  readonly what: "board" | "page";
}) {
  const since = lastHeardMs === null ? "" : ` since ${wallTime(lastHeardMs, timeZone, true)}`;
  return (
    <div className={styles.lost} role="alert" data-testid="lost">
      <Mark name="blind" />
      <p>
        <b>No connection to the server{since}.</b>{" "}
        <span>This {what} shows what was known then. Play goes on. Trying again.</span>
      </p>
    </div>
  );
}
