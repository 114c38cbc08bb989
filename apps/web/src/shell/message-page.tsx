import type { ReactNode } from "react";
import styles from "./shell.module.css";

interface MessagePageProps {
  readonly title: string;
  readonly children: ReactNode;
}

/** A page that says one thing and what to do. */
export function MessagePage({ title, children }: MessagePageProps) {
  return (
    <main className={`${styles.page} ${styles.narrow}`}>
      <h1>{title}</h1>
      {children}
    </main>
  );
}
