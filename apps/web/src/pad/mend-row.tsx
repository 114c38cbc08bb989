import { SHOT_KINDS, type Shot, type ShotKind } from "@courtloom/match-log";
import asks from "./asks.module.css";
import type { DraftEvent } from "./draft-reducer.ts";
import { useShortcut } from "./keys/key-hints.ts";
import styles from "./pad.module.css";

interface MendRowProps {
  readonly shot: Shot;
  readonly opponent: string;
  readonly redrawing: boolean;
  readonly send: (event: DraftEvent) => void;
}

const KIND_LABELS: Readonly<Record<ShotKind, string>> = {
  groundstroke: "Groundstroke",
  return: "Return",
  approach: "Approach",
  passing: "Passing shot",
  volley: "Volley",
  overhead: "Overhead",
  lob: "Lob",
  drop: "Drop shot",
};

/** What can be put right about one ball. */
export const MendRow = ({ shot, opponent, redrawing, send }: MendRowProps) => {
  const shortcut = useShortcut();
  return (
    <fieldset className={asks.mend} aria-label="Mend this ball">
      <button
        type="button"
        aria-pressed={redrawing}
        aria-keyshortcuts={shortcut("redraw")}
        onClick={() => send({ type: "redrawWanted" })}
      >
        Redraw
      </button>
      <button
        type="button"
        aria-keyshortcuts={shortcut("otherPlayer")}
        onClick={() => send({ type: "strikerChanged" })}
      >
        {opponent}’s ball
      </button>
      <label>
        <span className={styles.hidden}>Kind of shot</span>
        <select
          value={shot.kind ?? ""}
          onChange={(event) => {
            const kind = SHOT_KINDS.find((each) => each === event.target.value);
            send({ type: "kindChosen", ...(kind ? { kind } : {}) });
          }}
        >
          <option value="">Kind</option>
          {SHOT_KINDS.map((kind) => (
            <option key={kind} value={kind}>
              {KIND_LABELS[kind]}
            </option>
          ))}
        </select>
      </label>
      <button type="button" aria-keyshortcuts={shortcut("remove")} onClick={() => send({ type: "removed" })}>
        Remove
      </button>
    </fieldset>
  );
};
