import { PLAN_CHOICES, type ShareTarget } from "@courtloom/match-log";
import { ActionButton } from "../form/action-button.tsx";
import { Field } from "../form/field.tsx";
import { CHOICE_LABELS } from "./facet-words.ts";
import styles from "./plan.module.css";
import { ShareField } from "./share-field.tsx";

const MOST_TOLERANCE = 0.25;
const FIRST: ShareTarget = { choice: "kept", wants: "atLeast", share: 0.7, tolerance: 0.05 };

interface TargetFieldsProps {
  readonly targets: readonly ShareTarget[];
  readonly about: string;
  readonly onChange: (targets: readonly ShareTarget[]) => void;
}

interface OneTargetProps {
  readonly target: ShareTarget;
  readonly about: string;
  readonly onChange: (target: ShareTarget) => void;
  readonly onTakeOut: () => void;
}

function OneTarget({ target, about, onChange, onTakeOut }: OneTargetProps) {
  const { choice, wants, share, tolerance } = target;
  const choose = (text: string) =>
    onChange({ ...target, choice: PLAN_CHOICES.find((each) => each === text) ?? choice });
  return (
    <li className={styles.part}>
      <Field label={`Target ${about}: which choice`}>
        {(control) => (
          <select {...control} value={choice} onChange={(event) => choose(event.target.value)}>
            {PLAN_CHOICES.map((each) => (
              <option key={each} value={each}>
                {CHOICE_LABELS[each]}
              </option>
            ))}
          </select>
        )}
      </Field>
      <Field label="At least or at most">
        {(control) => (
          <select
            {...control}
            value={wants}
            onChange={(event) =>
              onChange({ ...target, wants: event.target.value === "atMost" ? "atMost" : "atLeast" })
            }
          >
            <option value="atLeast">At least this share</option>
            <option value="atMost">At most this share</option>
          </select>
        )}
      </Field>
      <ShareField
        label="Share of these balls, %"
        about={about}
        value={share}
        most={1}
        onChange={(next) => onChange({ ...target, share: next })}
      />
      <ShareField
        label="Give or take, %"
        about={about}
        value={tolerance}
        most={MOST_TOLERANCE}
        onChange={(next) => onChange({ ...target, tolerance: next })}
      />
      <ActionButton label="Take this target out" about={about} onPress={onTakeOut} />
    </li>
  );
}

/** Which shares a rule wants of its balls. */
export function TargetFields({ targets, about, onChange }: TargetFieldsProps) {
  const put = (at: number, next: readonly ShareTarget[]) => onChange(targets.toSpliced(at, 1, ...next));
  const places = targets.map((target, at) => ({ target, at }));
  return (
    <>
      {places.length > 0 ? (
        <ol className={styles.parts}>
          {places.map(({ target, at }) => (
            <OneTarget
              key={at}
              target={target}
              about={`${at + 1} ${about}`}
              onChange={(next) => put(at, [next])}
              onTakeOut={() => put(at, [])}
            />
          ))}
        </ol>
      ) : (
        <p>No target: balls are counted, and no share is wanted.</p>
      )}
      <ActionButton label="Add a target" about={about} onPress={() => onChange([...targets, FIRST])} />
    </>
  );
}
