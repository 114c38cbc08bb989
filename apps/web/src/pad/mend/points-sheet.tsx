import { type TimelineFact, timelineOf } from "@courtloom/match-log";
import { useMemo, useState } from "react";
import { factWords } from "../../match-words/fact-words.ts";
import { scoreWords } from "../second/score-words.ts";
import { Choices } from "./choices.tsx";
import { ConfirmChange } from "./confirm-change.tsx";
import { type FactMend, factMends } from "./fact-mends.ts";
import styles from "./mend.module.css";
import type { Mending } from "./mend-context.ts";
import { MendSheet } from "./mend-sheet.tsx";

const standing = ({ voided, setAside }: TimelineFact): string => {
  if (voided) return "taken out";
  return setAside ? "set aside: kept, and not counted" : "";
};

interface FactRowProps {
  readonly row: TimelineFact;
  readonly mending: Mending;
  readonly isOpen: boolean;
  readonly onOpen: () => void;
  readonly onDone: () => void;
}

/** One fact of the match: what it says, the score that it made, who charted it, and what can be done about it. */
const FactRow = ({ row, mending, isOpen, onOpen, onDone }: FactRowProps) => {
  const [wanted, setWanted] = useState<FactMend>();
  const words = factWords(mending.names, row.fact);
  const by = mending.nameOf(row.laneId);
  const note = [standing(row), by].filter(Boolean).join(", ");
  return (
    <li className={styles.fact} data-testid={`fact-${row.id}`} data-standing={!row.voided && !row.setAside}>
      <button type="button" aria-expanded={isOpen} onClick={onOpen}>
        <span>
          <b>{words}</b>
          {note && <small>{note}</small>}
        </span>
        <span className={styles.score}>{scoreWords(row.after)}</span>
      </button>
      {isOpen && !wanted && (
        <Choices
          label={`Mend: ${words}`}
          choices={factMends(row, mending).map((each) => ({
            label: each.label,
            onPress: () => setWanted(each),
          }))}
        />
      )}
      {isOpen && wanted && (
        <ConfirmChange
          mending={mending}
          title={wanted.label}
          bodies={wanted.bodies}
          onDone={onDone}
          onBack={() => setWanted(undefined)}
        />
      )}
    </li>
  );
};

interface PointsSheetProps {
  readonly mending: Mending;
  readonly onClose: () => void;
}

/** Every point and fact of the match, newest first, each to be mended, put before, taken out or put back. */
export const PointsSheet = ({ mending, onClose }: PointsSheetProps) => {
  const rows = useMemo(() => timelineOf(mending.view).toReversed(), [mending.view]);
  const [open, setOpen] = useState<string>();
  return (
    <MendSheet title="Points" onClose={onClose}>
      {rows.length === 0 && <p>No points yet. They are listed here once they are charted.</p>}
      <ol className={styles.facts} aria-label="Newest first">
        {rows.map((row) => (
          <FactRow
            key={row.id}
            row={row}
            mending={mending}
            isOpen={open === row.id}
            onOpen={() => setOpen(open === row.id ? undefined : row.id)}
            onDone={() => setOpen(undefined)}
          />
        ))}
      </ol>
    </MendSheet>
  );
};
