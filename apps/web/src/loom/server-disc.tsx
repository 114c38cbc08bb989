import styles from "./loom.module.css";

/** A small disc: this side serves. Where the score is also given in words, pass `named={false}`. */
export function ServerDisc({ named = true }: { readonly named?: boolean }) {
  if (!named) return <span className={styles.disc} aria-hidden="true" />;
  return <span className={styles.disc} role="img" aria-label="serves" />;
}
