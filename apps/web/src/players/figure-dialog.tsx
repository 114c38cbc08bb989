"use client";
import type { FigureRow, HistoryFilter } from "@courtloom/api";
import { OPPONENT_LEVELS } from "@courtloom/decisions";
import { LEVEL_WORDS } from "../board/tile-words.ts";
import { countWords } from "../loom/rate-words.ts";
import { Shuttle } from "../loom/shuttle.tsx";
import type { FigureKey } from "./figure-key.ts";
import { FIGURE_WORDS } from "./figure-words.ts";
import { leftOutWords, matches, OPPONENT_WORDS } from "./history-words.ts";
import { likelyWords } from "./likely-words.ts";
import { partWords } from "./part-words.ts";
import styles from "./players.module.css";
import { PointsDialog } from "./points-dialog.tsx";
import { shownRate, shownUsual } from "./shown-rate.ts";

interface FigureDialogProps {
  readonly playerId: string;
  readonly playerName: string;
  readonly figure: FigureKey;
  readonly row: FigureRow;
  readonly filter: HistoryFilter;
  readonly onClose: () => void;
}

/** Levels and opponents apart, and what is left out and why. SPEC PF9. */
function Apart({ row }: { readonly row: FigureRow }) {
  const { levels, byOpponent, leftOut, usual } = row;
  const fed = levels.filter(({ n }) => n > 0);
  const opponents = OPPONENT_LEVELS.filter((level) => byOpponent[level].n > 0);
  return (
    <dl className={styles.facts}>
      <dt>Opponents</dt>
      <dd>
        {opponents.map((level) => `${OPPONENT_WORDS[level]} ${countWords(byOpponent[level])}`).join("; ") ||
          "none"}
      </dd>
      <dt>Charted as</dt>
      <dd>{fed.map((each) => `${LEVEL_WORDS[each.level]} ${countWords(each)}`).join("; ") || "none"}</dd>
      {leftOut.length === 0 ? null : (
        <>
          <dt>Left out</dt>
          <dd data-testid="left-out">{leftOut.map(leftOutWords).join("; ")}</dd>
        </>
      )}
      {usual === null ? null : (
        <>
          <dt>Usual range from</dt>
          <dd>
            {usual.source === "own"
              ? "the player's own matches"
              : "the academy's matches, until own ones weigh more"}
          </dd>
        </>
      )}
    </dl>
  );
}

/** A figure opened: its count again, what it is made of, and the points it stands on. */
export function FigureDialog(props: FigureDialogProps) {
  const { playerId, playerName, figure, row, filter, onClose } = props;
  const words = FIGURE_WORDS[figure.figure];
  const part = figure.part === undefined ? undefined : row.parts.find((each) => each.part === figure.part);
  const rate = shownRate(part ?? row);
  const partTitle = figure.part === undefined ? "" : partWords(figure.figure, figure.part);
  const usual = figure.part === undefined ? shownUsual(row.usual) : undefined;
  return (
    <PointsDialog
      playerId={playerId}
      title={partTitle === "" ? words.label : `${words.label}: ${partTitle}`}
      figure={figure}
      filter={filter}
      words={{ hits: `The ${rate.x}`, others: `The other ${rate.n - rate.x}` }}
      tags={{ hits: `of the ${rate.x}`, others: `of the other ${rate.n - rate.x}` }}
      onClose={onClose}
    >
      <p className={styles.count} data-testid="opened-count">
        <b>{countWords(rate)}</b> {words.counted}, {matches(row.matches)}
      </p>
      <span className={styles.drawn}>
        <Shuttle what={`${playerName}, ${words.label}`} rate={rate} usual={usual} dye={words.dye ?? "ink"} />
      </span>
      {rate.n < 5 ? <p>Too few to say.</p> : <p className={styles.quiet}>{likelyWords(rate)}</p>}
      {figure.part === undefined ? <Apart row={row} /> : null}
    </PointsDialog>
  );
}
