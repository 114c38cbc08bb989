import { type ByPlayer, SIDES, type Side } from "@courtloom/core";
import { type Count, figuresOf } from "@courtloom/decisions";
import type { MatchView, Rate } from "@courtloom/match-log";
import { wilson } from "@courtloom/stats";
import { useMemo } from "react";
import { besideCount, countWords, type ShownRate } from "../../../loom/rate-words.ts";
import { Shuttle } from "../../../loom/shuttle.tsx";
import styles from "./court.module.css";
import { type ChosenFigure, FIGURE_NAMES, type FigureName } from "./court-shots.ts";

export const FIGURE_WORDS = {
  lineMissed: "line balls missed",
  lineShare: "groundstrokes down the line",
} satisfies Record<FigureName, string>;

const USUAL = { lineMissed: "lineMissed", lineShare: "lineShare" } satisfies Record<FigureName, Rate>;

const shown = ({ x, n }: Count): ShownRate => ({ x, n, ...wilson(x, n) });

interface FigureRowProps {
  readonly name: string;
  readonly figure: FigureName;
  readonly count: Count;
  readonly usual: ReturnType<typeof usualOf>;
  readonly isChosen: boolean;
  readonly choose: () => void;
}

const usualOf = (view: MatchView, side: Side, figure: FigureName) =>
  view.opened.usualRates?.[side][USUAL[figure]];

function FigureRow({ name, figure, count, usual, isChosen, choose }: FigureRowProps) {
  const rate = shown(count);
  return (
    <button
      type="button"
      className={styles.figure}
      aria-pressed={isChosen}
      onClick={choose}
      data-testid={figure}
    >
      <span className={styles.count}>
        <b>{count.n === 0 ? "none yet" : countWords(rate)}</b> {FIGURE_WORDS[figure]}
        <span className={styles.usual}> {besideCount(rate, usual)}</span>
      </span>
      <Shuttle
        what={`${name}, ${FIGURE_WORDS[figure]}`}
        rate={rate}
        usual={usual}
        dye={figure === "lineShare" ? "line" : "ink"}
      />
      {count.n === 0 ? null : (
        <span className={styles.open}>{isChosen ? "Showing its shots" : "Show its shots"}</span>
      )}
    </button>
  );
}

/** Figures of the charted players, each with n and interval; choosing one shows the shots that it stands on. */
export function CourtFigures({
  view,
  names,
  chosen,
  choose,
}: {
  readonly view: MatchView;
  readonly names: ByPlayer<string>;
  readonly chosen: ChosenFigure | null;
  readonly choose: (figure: ChosenFigure | null) => void;
}) {
  const figures = useMemo(() => figuresOf(view), [view]);
  const isChosen = (side: Side, figure: FigureName) => chosen?.side === side && chosen.figure === figure;
  const own = SIDES.filter((side) => view.opened.players[side].own);
  return (
    <section className={styles.figures} aria-labelledby="figures">
      <h2 id="figures">Figures</h2>
      {own.length === 0 ? <p>No player of this academy is in this match.</p> : null}
      {own.map((side) => {
        const mine = figures[side];
        return (
          <div key={side} className={styles.player} data-testid={`figures-${side}`}>
            <h3>{names[side]}</h3>
            {mine === undefined ? <p>not charted</p> : null}
            {mine &&
              FIGURE_NAMES.map((figure) => (
                <FigureRow
                  key={figure}
                  name={names[side]}
                  figure={figure}
                  count={mine[figure]}
                  usual={usualOf(view, side, figure)}
                  isChosen={isChosen(side, figure)}
                  choose={() => choose(isChosen(side, figure) ? null : { side, figure })}
                />
              ))}
          </div>
        );
      })}
      <p className={styles.key}>
        Scale from 0 to 10 in 10. Bead: this match. Its taper: how sure. Woven band: what is usual.
      </p>
    </section>
  );
}
