import type { ByPlayer } from "@courtloom/core";
import type { EntryBody, LaneRow } from "@courtloom/match-log";
import type { ScoreState } from "@courtloom/tennis";
import { useState } from "react";
import { placeWords, pointWords, theirWords } from "./row-words.ts";
import { scoreWords } from "./score-words.ts";
import styles from "./second.module.css";

export interface MergeActions {
  /** The score with a correction; nothing is charted by asking. */
  readonly preview: (body: EntryBody) => ScoreState;
  readonly merge: (body: EntryBody) => Promise<void>;
}

interface MergeRowProps {
  readonly row: LaneRow;
  readonly names: ByPlayer<string>;
  /** Who leads, and who charted the other lane. */
  readonly leadName: string;
  readonly otherName: string | undefined;
  readonly score: ScoreState;
  /** Absent where nothing can be merged: it is only read. */
  readonly act?: MergeActions;
  readonly onKeep?: () => void;
}

const changeWords = (now: ScoreState, then: ScoreState): string =>
  scoreWords(now) === scoreWords(then)
    ? `The score stays ${scoreWords(now)}.`
    : `The score ${scoreWords(now)} becomes ${scoreWords(then)}.`;

const TITLES: Readonly<Record<LaneRow["kind"], string>> = {
  same: "the same",
  differs: "differs",
  laneOnly: "only there",
  leadOnly: "only in the score",
};

const Telling = ({ row, names, leadName, otherName }: Omit<MergeRowProps, "score" | "act" | "onKeep">) => (
  <dl>
    <div>
      <dt>{leadName}</dt>
      <dd>{row.lead ? pointWords(names, row.lead) : "Not charted"}</dd>
    </div>
    <div>
      <dt>{otherName ?? "Another phone"}</dt>
      <dd>{row.other ? pointWords(names, row.other) : "Not charted"}</dd>
    </div>
  </dl>
);

interface ChoicesProps {
  readonly row: LaneRow;
  readonly otherName: string | undefined;
  readonly onUse: (body: EntryBody) => void;
  readonly onKeep: (() => void) | undefined;
}

const Choices = ({ row, otherName, onUse, onKeep }: ChoicesProps) => {
  const { merge, mergedBy, kind } = row;
  if (mergedBy)
    return (
      <div className={styles.choices}>
        <button type="button" onClick={() => onUse({ kind: "EntryVoided", target: mergedBy })}>
          Take {theirWords(otherName)} out again
        </button>
      </div>
    );
  if (!merge) return null;
  return (
    <div className={styles.choices}>
      <button type="button" onClick={() => onUse(merge)} data-testid="use-theirs">
        {kind === "laneOnly" ? "Put in" : `Use ${theirWords(otherName)}`}
      </button>
      {onKeep && (
        <button type="button" onClick={onKeep} data-testid="keep-mine">
          {kind === "laneOnly" ? "Leave out" : "Keep mine"}
        </button>
      )}
    </div>
  );
};

/** One point as both have it, and what may be done; the score's change is shown before it is confirmed. */
export const MergeRow = (props: MergeRowProps) => {
  const { row, otherName, score, act, onKeep } = props;
  const [asked, setAsked] = useState<EntryBody>();
  const [busy, setBusy] = useState(false);
  const confirm = async (body: EntryBody) => {
    setBusy(true);
    await act?.merge(body);
    setAsked(undefined);
    setBusy(false);
  };
  return (
    <li className={styles.row} data-testid={`row-${row.kind}`}>
      <h4>
        {placeWords(row)}: {TITLES[row.kind]}
        {row.mergedBy ? `, taken from ${otherName ?? "another phone"}` : ""}
      </h4>
      <Telling {...props} />
      {act && !asked && <Choices row={row} otherName={otherName} onUse={setAsked} onKeep={onKeep} />}
      {act && asked && (
        <>
          <p className={styles.preview} role="status" data-testid="merge-change">
            {changeWords(score, act.preview(asked))}
          </p>
          <div className={styles.choices}>
            <button
              type="button"
              className={styles.confirm}
              disabled={busy}
              onClick={() => void confirm(asked)}
              data-testid="confirm-merge"
            >
              Confirm
            </button>
            <button type="button" disabled={busy} onClick={() => setAsked(undefined)}>
              Cancel
            </button>
          </div>
        </>
      )}
    </li>
  );
};
