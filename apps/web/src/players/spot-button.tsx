import type { LineSpot } from "@courtloom/api";
import { signedWorth } from "./estimate-words.ts";
import styles from "./line-map.module.css";
import { bothCounts, depthWords, findingWords } from "./map-words.ts";

const SHORT = { pays: "Pays", costs: "Costs", cantTell: "Can't tell yet" } as const;
const ARROWS = { pays: "M0 -7 8 6H-8Z", costs: "M0 7 8 -6H-8Z" } as const;

/** The mark of what pays or costs; decoration beside its word. */
export function WorthMark({ verdict }: { readonly verdict: LineSpot["verdict"] }) {
  if (verdict === "cantTell") return null;
  return (
    <svg className={styles.mark} viewBox="-10 -10 20 20" aria-hidden="true">
      <path d={ARROWS[verdict]} fill="currentColor" />
    </svg>
  );
}

interface SpotButtonProps {
  readonly spot: LineSpot;
  readonly isChosen: boolean;
  readonly choose: () => void;
}

/** One place of the map: its pattern and word, both counts, and whether the plan says otherwise. SPEC PF13, PF14. */
export function SpotButton({ spot, isChosen, choose }: SpotButtonProps) {
  const { verdict, worth, depth, side, contradicts } = spot;
  return (
    <button
      type="button"
      className={styles.spot}
      data-verdict={verdict}
      data-testid={`spot-${depth}-${side}`}
      aria-pressed={isChosen}
      onClick={choose}
    >
      <span className={styles.tag}>
        <span className={styles.where}>
          {depthWords(depth)}
          <span className="vh">, {side} side: </span>
        </span>
        <span className={styles.word}>
          <WorthMark verdict={verdict} />
          {SHORT[verdict]}
          {verdict === "cantTell" || worth === null ? null : ` ${signedWorth(worth)}`}
        </span>
        <span className={styles.counts}>
          <span className="vh">: {findingWords(spot)} </span>
          {bothCounts(spot)}
        </span>
        {contradicts === null ? null : (
          <span className={styles.against}>
            <span className="vh">, </span>the plan says otherwise
          </span>
        )}
      </span>
    </button>
  );
}
