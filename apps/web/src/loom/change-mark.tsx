import styles from "./loom.module.css";

/** Two arrows that change places: ends. Decoration beside words. */
export function ChangeMark() {
  return (
    <svg className={styles.mark} viewBox="0 0 24 24" aria-hidden="true">
      <path
        d="M2 8h18M14.5 3 20 8l-5.5 5M22 17H4M9.5 12 4 17l5.5 5"
        fill="none"
        stroke="currentColor"
        strokeWidth="2.4"
      />
    </svg>
  );
}
