import { Field } from "../form/field.tsx";
import styles from "../form/form.module.css";

/** The rules of a format that has no name here. */
export function OwnRulesFields() {
  return (
    <fieldset className={styles.group}>
      <legend>Own rules</legend>
      <div className={styles.row}>
        <Field label="Best of sets">
          {(control) => (
            <select {...control} name="sets" defaultValue="3">
              <option>1</option>
              <option>3</option>
              <option>5</option>
            </select>
          )}
        </Field>
        <Field label="Games to a set">
          {(control) => (
            <input
              {...control}
              name="gamesPerSet"
              type="number"
              min={1}
              max={200}
              required
              defaultValue={6}
            />
          )}
        </Field>
        <Field label="Tie-break to">
          {(control) => (
            <input {...control} name="tiebreakTo" type="number" min={1} max={200} required defaultValue={7} />
          )}
        </Field>
        <Field label="Deciding set">
          {(control) => (
            <select {...control} name="finalSet" defaultValue="same">
              <option value="same">Like the others</option>
              <option value="matchTiebreak">Match tie-break to 10</option>
            </select>
          )}
        </Field>
      </div>
      <label className={styles.check}>
        <input type="checkbox" name="tiebreak" defaultChecked /> Tie-break when games are level at that number
      </label>
      <label className={styles.check}>
        <input type="checkbox" name="noAd" /> No-ad: one point decides at deuce
      </label>
    </fieldset>
  );
}
