import styles from "./loom.module.css";

/** The shapes of states; none relies on colour. SPEC rule BD4. */
export const MARKS = [
  "alert",
  "easing",
  "noticed",
  "withdrawn",
  "blind",
  "waiting",
  "suspended",
  "over",
] as const;
export type MarkName = (typeof MARKS)[number];

const DIAMOND = "M12 2.2 21.8 12 12 21.8 2.2 12Z";

const hollow = <path d={DIAMOND} fill="none" stroke="currentColor" strokeWidth="2.4" />;

const SHAPES = {
  alert: <path d="M12 1 23 12 12 23 1 12Z" fill="currentColor" />,
  easing: (
    <>
      {hollow}
      <path d="M2.2 12h19.6L12 21.8Z" fill="currentColor" />
    </>
  ),
  noticed: hollow,
  withdrawn: (
    <>
      {hollow}
      <path d="M1 12h22" stroke="currentColor" strokeWidth="2.6" />
    </>
  ),
  blind: (
    <>
      <path d="M0 12h8M16 12h8" stroke="currentColor" strokeWidth="4" />
      <path d="M9.5 19 14.5 5" stroke="currentColor" strokeWidth="2.6" />
    </>
  ),
  waiting: <rect x="3" y="3" width="18" height="18" fill="none" stroke="currentColor" strokeWidth="2.6" />,
  suspended: <path d="M8 3v18M16 3v18" stroke="currentColor" strokeWidth="5" />,
  over: <path d="M2 12h20M2 6v12M22 6v12" stroke="currentColor" strokeWidth="3.4" />,
} satisfies Record<MarkName, React.ReactNode>;

/** A state's shape. Decoration beside its word: the word is always written too. */
export function Mark({ name }: { readonly name: MarkName }) {
  return (
    <svg className={styles.mark} viewBox="0 0 24 24" aria-hidden="true" data-mark={name}>
      {SHAPES[name]}
    </svg>
  );
}
