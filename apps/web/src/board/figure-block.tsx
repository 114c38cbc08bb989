import type { TileFigures, TileRate } from "@courtloom/protocol";
import { besideCount, countWords } from "../loom/rate-words.ts";
import { Shuttle } from "../loom/shuttle.tsx";
import styles from "./tile-figures.module.css";

/** "9 of 31 groundstrokes down the line"; a phone has no room for the middle word. */
function Share({ x, n }: { readonly x: number; readonly n: number }) {
  if (n === 0) return <p className={styles.share}>no groundstrokes yet</p>;
  return (
    <p className={styles.share} data-testid="share">
      {x} of {n} <span className={styles.long}>groundstrokes </span>down the line
    </p>
  );
}

export interface FigureBlockProps {
  readonly name: string;
  readonly figures: TileFigures;
  /** Two in one tile are drawn smaller. */
  readonly compact: boolean;
}

/** "Plan kept 14 of 19", with its own small shuttle; nothing where no plan could judge a ball. */
function PlanKept({ name, rate }: { readonly name: string; readonly rate: TileRate | undefined }) {
  if (!rate || rate.n === 0) return null;
  return (
    <div className={styles.plan} data-testid="plan-kept">
      <span>
        <span className={styles.planWord}>
          plan <span className={styles.kept}>kept </span>
        </span>
        <b>{countWords(rate)}</b>
      </span>
      <span className={styles.planDrawing}>
        <Shuttle what={`Plan kept, ${name}`} rate={rate} size="small" />
      </span>
    </div>
  );
}

/** One charted player's figures: line balls missed over the usual range, and how often the line was chosen. */
export function FigureBlock({ name, figures, compact }: FigureBlockProps) {
  const { lineMissed, lineShare, usualLineMissed, planKept } = figures;
  return (
    <div className={compact ? styles.figureCompact : styles.figure} data-testid="figure">
      <p className={styles.label}>
        <b>{name}</b>
        {compact ? null : " line balls missed"}
      </p>
      <p className={styles.count}>
        {compact ? (
          <span className={styles.who} aria-hidden="true">
            {name}{" "}
          </span>
        ) : null}
        {lineMissed.n === 0 ? (
          <span>none tried yet</span>
        ) : (
          <b className={styles.number}>{countWords(lineMissed)}</b>
        )}
        <span className={styles.beside}> {besideCount(lineMissed, usualLineMissed)}</span>
      </p>
      <div className={styles.drawing}>
        <Shuttle
          what={`Line balls missed, ${name}`}
          rate={lineMissed}
          usual={usualLineMissed}
          size={compact ? "small" : "large"}
        />
      </div>
      <Share x={lineShare.x} n={lineShare.n} />
      <PlanKept name={name} rate={planKept} />
    </div>
  );
}
