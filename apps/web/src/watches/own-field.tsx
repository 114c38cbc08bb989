import styles from "./watches.module.css";

interface OwnFieldProps {
  readonly isOwn: boolean;
  /** What the academy's settings watch, in a line. */
  readonly academys: string;
  readonly onChange: (isOwn: boolean) => void;
}

/** Whether the academy's settings hold for a player, or own ones. */
export function OwnField({ isOwn, academys, onChange }: OwnFieldProps) {
  return (
    <fieldset className={styles.rates}>
      <legend>For this player</legend>
      <div className={styles.rate}>
        <label className={styles.radio}>
          <input type="radio" name="own" checked={!isOwn} onChange={() => onChange(false)} />
          As the academy's
        </label>
        <p>{academys}</p>
      </div>
      <div className={styles.rate}>
        <label className={styles.radio}>
          <input type="radio" name="own" checked={isOwn} onChange={() => onChange(true)} />
          Own settings
        </label>
      </div>
    </fieldset>
  );
}
