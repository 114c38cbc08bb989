import { SIDES, type Side } from "@courtloom/core";
import { type Fact, timelineOf } from "@courtloom/match-log";
import { type Dispatch, type SetStateAction, useState } from "react";
import { Choices } from "./choices.tsx";
import styles from "./mend.module.css";
import type { Mending } from "./mend-context.ts";
import { missedGame } from "./mend-score.ts";
import { readStatedScore, type TypedScore } from "./read-stated-score.ts";

interface PairProps {
  readonly title: "Games" | "Points";
  readonly mending: Mending;
  readonly value: TypedScore["games"];
  readonly onValue: (value: TypedScore["games"]) => void;
}

const Pair = ({ title, mending, value, onValue }: PairProps) =>
  SIDES.map((side: Side) => (
    <label key={side}>
      {title} {mending.names[side]}
      <input
        inputMode={title === "Games" ? "numeric" : "text"}
        autoComplete="off"
        value={value[side]}
        onChange={(event) => onValue({ ...value, [side]: event.target.value })}
      />
    </label>
  ));

const EMPTY: TypedScore = {
  sets: "",
  games: { A: "", B: "" },
  points: { A: "", B: "" },
  server: "",
  missed: false,
};

interface FieldsProps {
  readonly mending: Mending;
  readonly typed: TypedScore;
  readonly change: Dispatch<SetStateAction<TypedScore>>;
}

const Fields = ({ mending, typed, change }: FieldsProps) => {
  const { names } = mending;
  const set = (part: Partial<TypedScore>) => change((now) => ({ ...now, ...part }));
  return (
    <div className={styles.fields}>
      <label>
        Finished sets, {names.A} first
        <input
          value={typed.sets}
          autoComplete="off"
          placeholder="6-4 3-6"
          onChange={(event) => set({ sets: event.target.value })}
        />
      </label>
      <Pair title="Games" mending={mending} value={typed.games} onValue={(games) => set({ games })} />
      <Pair title="Points" mending={mending} value={typed.points} onValue={(points) => set({ points })} />
      <label>
        Serves next
        <select
          value={typed.server}
          onChange={({ target: { value } }) => set({ server: value === "A" || value === "B" ? value : "" })}
        >
          <option value="">In order of service</option>
          <option value="A">{names.A}</option>
          <option value="B">{names.B}</option>
        </select>
      </label>
    </div>
  );
};

interface ScoreFormProps {
  readonly mending: Mending;
  /** The fact before which the score is stated; absent: now. */
  readonly before?: string;
  readonly onWanted: (title: string, facts: readonly Fact[]) => void;
}

/** The score as the players have it, and whether points were played that nobody charted. What was typed stays. */
export const ScoreForm = ({ mending, before, onWanted }: ScoreFormProps) => {
  const { view, names, epoch } = mending;
  const [typed, change] = useState(EMPTY);
  const [problem, setProblem] = useState<string>();
  const there = before && timelineOf(view).find(({ id }) => id === before)?.before;
  const score = there || view.score;
  const look = (missed: boolean) => {
    const read = readStatedScore({ ...typed, missed }, score.tieBreak);
    setProblem(read.ok ? undefined : read.error);
    if (read.ok) onWanted(missed ? "Missed: set the score" : "Set the score", [read.value]);
  };
  return (
    <section className={styles.part} aria-label="Set the score">
      <h3>{before ? "The score before it" : "Set the score"}</h3>
      <p>
        The players’ score counts; this is a record. Leave empty what is right as it stands. Points: 0, 15,
        30, 40, Ad, or the tie-break’s numbers.
      </p>
      {!before && !view.score.over && (
        <Choices
          label="Missed this game"
          choices={SIDES.map((side) => ({
            label: `Missed this game: ${names[side]} won it`,
            onPress: () =>
              onWanted(`Missed this game: ${names[side]} won it`, [missedGame(view, side, epoch)]),
          }))}
        />
      )}
      <Fields mending={mending} typed={typed} change={change} />
      {problem && (
        <p role="alert" data-testid="score-problem">
          {problem}
        </p>
      )}
      <div className={styles.choices}>
        <button type="button" onClick={() => look(false)}>
          The score was disputed or wrong
        </button>
        <button type="button" onClick={() => look(true)}>
          We missed points or games
        </button>
      </div>
    </section>
  );
};
