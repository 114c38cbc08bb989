import { useBoardFacts } from "./board-facts.ts";
import type { Freshness } from "./freshness.ts";
import styles from "./tile.module.css";
import { useFreshness } from "./use-board.ts";

const PULSE = [3, 6, 10];

/** How many of the three bars stand: one is lost for each step of silence. */
const barsOf = (freshness: Freshness): number =>
  freshness.kind === "heard" ? PULSE.filter((until) => freshness.seconds <= until).length : 0;

/** How long ago the court's phone was heard. Silent on a blind court (its flag says it) and where nothing is played. */
export function TileFreshness({ courtId }: { readonly courtId: string }) {
  const freshness = useFreshness(courtId);
  const { stale } = useBoardFacts();
  if (stale || freshness.kind === "none" || freshness.kind === "blind") return null;
  const bars = barsOf(freshness);
  return (
    <p className={freshness.kind === "notHeard" ? styles.silent : styles.fresh} data-testid="freshness">
      <span className={styles.pulse} aria-hidden="true">
        {PULSE.map((until, i) => (
          <i key={until} className={i < bars ? styles.beat : styles.noBeat} />
        ))}
      </span>
      {freshness.kind === "notHeard" ? (
        <b>not heard {freshness.seconds} s</b>
      ) : (
        <span>
          <span className="vh">heard </span>
          {freshness.seconds} s<span className="vh"> ago</span>
        </span>
      )}
    </p>
  );
}
