import { useId, useState } from "react";
import { Field } from "../form/field.tsx";
import styles from "../form/form.module.css";
import { findPlayer, type ListedPlayer } from "./name-player.ts";

interface PlayerFieldsProps {
  readonly label: string;
  /** Begins the names of the form's controls, such as "A1". */
  readonly field: string;
  readonly players: readonly ListedPlayer[];
  readonly ownAtFirst: boolean;
  readonly error: string | undefined;
}

/** A player from the list, or a new name with hand and whether it is one of ours. */
export function PlayerFields({ label, field, players, ownAtFirst, error }: PlayerFieldsProps) {
  const listId = useId();
  const [name, setName] = useState("");
  const known = findPlayer(players, name);
  const isNew = name.trim() !== "" && !known;
  return (
    <>
      <Field
        label={label}
        hint={known ? (known.own ? "On the list, ours" : "On the list, a visitor") : undefined}
        error={error}
      >
        {(control) => (
          <input
            {...control}
            name={`${field}-name`}
            list={listId}
            required
            maxLength={60}
            autoComplete="off"
            value={name}
            onChange={(event) => setName(event.target.value)}
          />
        )}
      </Field>
      <datalist id={listId}>
        {players.map((player) => (
          <option key={player.playerId} value={player.displayName} />
        ))}
      </datalist>
      {isNew ? (
        <div className={styles.row}>
          <Field label={`Hand of ${name.trim()}`}>
            {(control) => (
              <select {...control} name={`${field}-hand`} defaultValue="unknown">
                <option value="unknown">Not known</option>
                <option value="right">Right</option>
                <option value="left">Left</option>
              </select>
            )}
          </Field>
          <label className={styles.check}>
            <input type="checkbox" name={`${field}-own`} defaultChecked={ownAtFirst} /> New name, one of ours
          </label>
        </div>
      ) : null}
    </>
  );
}
