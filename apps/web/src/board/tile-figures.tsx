import { type ByPlayer, SIDES } from "@courtloom/core";
import type { Tile } from "@courtloom/protocol";
import { FigureBlock } from "./figure-block.tsx";
import styles from "./tile-figures.module.css";

/** The figures of a court's charted players; an own player who is not charted is named as such. */
export function TileFiguresPart({
  staff,
  names,
  own,
}: {
  readonly staff: NonNullable<Tile["staff"]>;
  readonly names: ByPlayer<string>;
  readonly own: ByPlayer<boolean> | null;
}) {
  const charted = SIDES.filter((side) => staff.figures[side] !== null);
  const notCharted = SIDES.filter((side) => staff.figures[side] === null && own?.[side]);
  // A level that feeds no figure has nothing to show; the line below says which level it is.
  if (staff.level === "score" && charted.every((side) => staff.figures[side]?.lineShare.n === 0)) return null;
  return (
    <div className={styles.figures}>
      {charted.length > 1 ? <p className={styles.what}>Line balls missed</p> : null}
      {charted.map((side) => {
        const figures = staff.figures[side];
        return figures ? (
          <FigureBlock key={side} name={names[side]} figures={figures} compact={charted.length > 1} />
        ) : null;
      })}
      {notCharted.map((side) => (
        <p key={side} className={styles.notCharted}>
          {names[side]}: not charted
        </p>
      ))}
    </div>
  );
}
