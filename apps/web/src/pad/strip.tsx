import styles from "./court.module.css";

/** One line above the thumb: what was understood, or what comes next. */
export interface StripText {
  readonly lead: string;
  readonly rest?: string;
  readonly aside?: string;
}

interface StripProps {
  readonly text: StripText;
  /** Look here: a ball is being drawn. */
  readonly look: boolean;
}

export const Strip = ({ text, look }: StripProps) => (
  <p className={styles.strip} data-look={look} data-testid="strip" role="status">
    <span>
      <b>{text.lead}</b>
      {text.rest ? ` ${text.rest}` : ""}
    </span>
    {text.aside && <span className={styles.aside}>{text.aside}</span>}
  </p>
);
