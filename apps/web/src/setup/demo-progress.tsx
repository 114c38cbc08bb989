import { useId } from "react";
import styles from "./setup.module.css";

interface DemoProgressProps {
  /** A share in [0, 1]. */
  readonly done: number;
  readonly what: string;
}

/** How far the demo academy is loaded, drawn and read out. */
export function DemoProgress({ done, what }: DemoProgressProps) {
  const id = useId();
  return (
    <div className={styles.progress}>
      <label htmlFor={id}>Loading the demo academy</label>
      <progress id={id} max={1} value={done} />
      <p role="status">{what}</p>
    </div>
  );
}
