import type { ByPlayer } from "@courtloom/core";
import type { LaneComparison, LaneRow } from "@courtloom/match-log";
import type { ScoreState } from "@courtloom/tennis";
import { useEffect, useRef, useState } from "react";
import pad from "../pad.module.css";
import { rowsToJudge } from "./lanes-to-compare.ts";
import { type MergeActions, MergeRow } from "./merge-row.tsx";
import { countWords, laneWords } from "./row-words.ts";
import { scoreWords } from "./score-words.ts";
import styles from "./second.module.css";

interface MergeSheetProps {
  readonly comparisons: readonly LaneComparison[];
  readonly names: ByPlayer<string>;
  readonly leadName: string;
  readonly nameOf: (laneId: string) => string | undefined;
  readonly score: ScoreState;
  readonly act: MergeActions;
  readonly onClose: () => void;
}

const keyOf = ({ other, lead }: LaneRow): string => `${other?.id ?? ""} ${lead?.id ?? ""}`;

type LanePartProps = Omit<MergeSheetProps, "comparisons" | "onClose"> & {
  readonly comparison: LaneComparison;
};

/** One other lane: how it compares, and its points; those that both have alike only when asked for. */
const LanePart = ({ comparison, names, leadName, nameOf, score, act }: LanePartProps) => {
  const [all, setAll] = useState(false);
  const [kept, setKept] = useState<ReadonlySet<string>>(new Set());
  const name = nameOf(comparison.laneId);
  const toJudge = rowsToJudge(comparison).filter((row) => !kept.has(keyOf(row)));
  const shown = all
    ? comparison.rows
    : comparison.rows.filter((row) => toJudge.includes(row) || row.mergedBy);
  const keep = (rows: readonly LaneRow[]) => setKept(new Set([...kept, ...rows.map(keyOf)]));
  return (
    <section className={styles.lane} data-testid="lane-beside">
      <h3>{laneWords(comparison, name)}</h3>
      <p data-testid="lane-counts">{countWords(comparison)}</p>
      <div className={styles.choices}>
        <button type="button" aria-pressed={all} onClick={() => setAll(!all)}>
          {all ? "Show what differs" : "Show all points"}
        </button>
        {toJudge.length > 1 && !all && (
          <button type="button" onClick={() => keep(toJudge)}>
            Keep all mine
          </button>
        )}
      </div>
      {shown.length === 0 && <p>Nothing left to look at.</p>}
      <ol>
        {shown.map((row) => (
          <MergeRow
            key={keyOf(row)}
            {...{ row, names, leadName, otherName: name, score, act }}
            {...(all ? {} : { onKeep: () => keep([row]) })}
          />
        ))}
      </ol>
    </section>
  );
};

/** Points beside the score, lane by lane, for whoever leads to merge one by one. */
export const MergeSheet = ({ comparisons, onClose, ...rest }: MergeSheetProps) => {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} className={styles.sheet} aria-label="Second lanes" onClose={onClose}>
      <h2>Beside the score</h2>
      <p>
        The score: <b data-testid="merge-score">{scoreWords(rest.score)}</b>. Nothing here counts until you
        put it in, one point at a time.
      </p>
      {comparisons.map((comparison) => (
        <LanePart key={comparison.laneId} comparison={comparison} {...rest} />
      ))}
      <div className={styles.stick}>
        <button type="button" className={pad.primary} onClick={onClose}>
          Back to the court
        </button>
      </div>
    </dialog>
  );
};
