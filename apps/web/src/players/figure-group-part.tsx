import type { FigureRow } from "@courtloom/api";
import type { FigureName } from "@courtloom/decisions";
import { FigureButton } from "./figure-button.tsx";
import type { FigureGroup } from "./figure-groups.ts";
import type { FigureKey } from "./figure-key.ts";
import { FIGURE_WORDS } from "./figure-words.ts";
import type { FiguresByName } from "./figures-by-name.ts";
import { FOUR_COUNTS, FourCounts } from "./four-counts.tsx";
import { orderedParts } from "./part-words.ts";
import styles from "./players.module.css";

interface GroupProps {
  readonly playerName: string;
  readonly group: FigureGroup;
  readonly figures: FiguresByName;
  readonly open: (figure: FigureKey) => void;
}

/** Figures that are read part by part: their parts stand open, the others' wait behind a line. */
const OPEN_PARTS: readonly FigureName[] = ["builtUp", "rallyLength"];

function Parts({
  playerName,
  row,
  open,
}: Pick<GroupProps, "playerName" | "open"> & { readonly row: FigureRow }) {
  const rates = new Map(row.parts.map((rate) => [rate.part, rate]));
  const rows = orderedParts([...rates.keys()]).flatMap((part) => {
    const rate = rates.get(part);
    return rate === undefined ? [] : { part, rate };
  });
  const buttons = rows.map(({ part, rate }) => (
    <FigureButton
      key={part}
      playerName={playerName}
      figure={{ figure: row.id, part }}
      rate={rate}
      open={open}
    />
  ));
  if (OPEN_PARTS.includes(row.id)) return <div className={styles.parts}>{buttons}</div>;
  return (
    <details className={styles.details}>
      <summary>
        {FIGURE_WORDS[row.id].label}, {rows.length === 1 ? "1 part" : `in ${rows.length} parts`}
      </summary>
      <div className={styles.parts}>{buttons}</div>
    </details>
  );
}

/** One group of figures under its heading. */
export function FigureGroupPart({ playerName, group, figures, open }: GroupProps) {
  const isFour = group.id === "counts";
  const single = isFour ? group.figures.filter((figure) => !FOUR_COUNTS.includes(figure)) : group.figures;
  return (
    <section className={styles.group} aria-labelledby={`group-${group.id}`}>
      <h2 id={`group-${group.id}`}>{group.title}</h2>
      <p className={styles.quiet}>{group.about}</p>
      {isFour ? <FourCounts playerName={playerName} figures={figures} open={open} /> : null}
      {single.map((figure) => {
        const row = figures[figure];
        return (
          <div key={figure} className={styles.withParts}>
            <FigureButton
              playerName={playerName}
              figure={{ figure }}
              rate={row}
              usual={row.usual}
              open={open}
            />
            {row.n > 0 && row.parts.length > 0 ? (
              <Parts playerName={playerName} row={row} open={open} />
            ) : null}
          </div>
        );
      })}
    </section>
  );
}
