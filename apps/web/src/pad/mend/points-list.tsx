import type { ReactNode } from "react";
import type { FactGroup, FactRow } from "./fact-groups.ts";
import styles from "./mend.module.css";

interface PointsListProps {
  readonly groups: readonly FactGroup[];
  /** The row that is open, if any. */
  readonly openId: string | undefined;
  readonly onOpen: (id: string) => void;
  /** What stands under the row that is open. */
  readonly children?: ReactNode;
}

interface RowProps {
  readonly row: FactRow;
  readonly isOpen: boolean;
  readonly onOpen: (id: string) => void;
  readonly children: ReactNode;
}

const Row = ({ row, isOpen, onOpen, children }: RowProps) => (
  <li className={styles.fact} data-testid={`fact-${row.id}`} data-standing={row.counts}>
    <button type="button" aria-expanded={isOpen} onClick={() => onOpen(row.id)}>
      <span>
        <b>{row.words}</b>
        {row.notes.length > 0 && <small>{row.notes.join(", ")}</small>}
      </span>
      <span className={styles.score}>
        {row.before}
        {row.after && (
          <>
            <span aria-hidden="true"> → </span>
            <span className={styles.hidden}> becomes </span>
            {row.after}
          </>
        )}
      </span>
    </button>
    {isOpen && children}
  </li>
);

/** Facts of a match under their games, newest first; one at a time is open. It knows nothing but its rows. */
export const PointsList = ({ groups, openId, onOpen, children }: PointsListProps) =>
  groups.map(({ key, title, rows }) => (
    <section key={key} className={styles.part}>
      <h3>{title}</h3>
      <ol className={styles.facts} aria-label={`${title}, newest first`}>
        {rows.map((row) => (
          <Row key={row.id} row={row} isOpen={row.id === openId} onOpen={onOpen}>
            {children}
          </Row>
        ))}
      </ol>
    </section>
  ));
