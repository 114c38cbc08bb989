import styles from "./form.module.css";

/** Why something was not done, read out when it appears; nothing when there is nothing to say. */
export function ProblemNote({ sentence }: { readonly sentence: string | undefined }) {
  return sentence === undefined ? null : (
    <p className={styles.problem} role="alert">
      {sentence}
    </p>
  );
}
