import type { ReactNode } from "react";
import styles from "./board.module.css";

/** A whole screen that has nothing to show, and what to do about it. */
export function ScreenMessage({
  title,
  children,
  testId,
}: {
  readonly title: string;
  readonly children?: ReactNode;
  readonly testId: string;
}) {
  return (
    <main className={styles.message} data-testid={testId}>
      <h1>{title}</h1>
      {children}
    </main>
  );
}
