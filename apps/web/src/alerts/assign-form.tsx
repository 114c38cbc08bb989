import { useId } from "react";
import styles from "./alerts.module.css";
import { useAlerts } from "./use-alerts.ts";

const NOBODY = "";

/** Chooses who looks after an alert. */
export function AssignForm({
  assigned,
  assign,
}: {
  readonly assigned: string | null;
  readonly assign: (memberId: string | null) => void;
}) {
  const id = useId();
  const members = useAlerts(({ alerts }) => alerts.members);
  return (
    <div className={styles.form}>
      <label htmlFor={id}>Who looks after it</label>
      <select
        id={id}
        value={assigned ?? NOBODY}
        onChange={(event) => assign(event.currentTarget.value === NOBODY ? null : event.currentTarget.value)}
      >
        <option value={NOBODY}>Nobody</option>
        {members.map(({ memberId, name }) => (
          <option key={memberId} value={memberId}>
            {name}
          </option>
        ))}
      </select>
    </div>
  );
}
