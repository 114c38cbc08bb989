import type { RateRow, UsualRow } from "@courtloom/api";
import { FIGURES } from "@courtloom/decisions";
import { besideCount, countWords } from "../loom/rate-words.ts";
import { Shuttle } from "../loom/shuttle.tsx";
import type { FigureKey } from "./figure-key.ts";
import { FIGURE_WORDS } from "./figure-words.ts";
import { likelyWords } from "./likely-words.ts";
import { partWords } from "./part-words.ts";
import styles from "./players.module.css";
import { shownRate, shownUsual } from "./shown-rate.ts";

interface FigureButtonProps {
  readonly playerName: string;
  readonly figure: FigureKey;
  readonly rate: RateRow;
  readonly usual?: UsualRow | null;
  readonly open: (figure: FigureKey) => void;
}

const titleOf = ({ figure, part }: FigureKey): string =>
  part === undefined ? FIGURE_WORDS[figure].label : partWords(figure, part);

/** A figure without anything counted, and what it would need. */
function NoFigure({ figure }: { readonly figure: FigureKey }) {
  const needsEveryBall = !FIGURES[figure.figure].levels.includes("key");
  return (
    <p className={styles.none} data-testid={`figure-${figure.figure}`}>
      <span>{titleOf(figure)}</span>
      <span className={styles.quiet}>{needsEveryBall ? "none charted at every ball" : "none charted"}</span>
    </p>
  );
}

/** One figure: what, count first, how sure, what is usual; pressing it opens the points it stands on. SPEC PF3. */
export function FigureButton({ playerName, figure, rate, usual = null, open }: FigureButtonProps) {
  if (rate.n === 0) return <NoFigure figure={figure} />;
  const words = FIGURE_WORDS[figure.figure];
  const isPart = figure.part !== undefined;
  const title = titleOf(figure);
  const [shown, expected] = [shownRate(rate), shownUsual(usual)];
  const beside = [besideCount(shown, expected), likelyWords(shown)].filter(Boolean).join("; ");
  return (
    <button
      type="button"
      className={styles.figure}
      data-part={isPart || undefined}
      data-testid={isPart ? `part-${figure.part}` : `figure-${figure.figure}`}
      onClick={() => open(figure)}
    >
      <span className={styles.title}>{title}</span>
      <span className={styles.count}>
        <b>{countWords(shown)}</b> {words.counted}
      </span>
      <span className={styles.drawn}>
        <Shuttle
          what={`${playerName}, ${words.label}${isPart ? `, ${title}` : ""}`}
          rate={shown}
          usual={expected}
          dye={words.dye ?? "ink"}
          size={isPart ? "small" : "large"}
        />
      </span>
      <span className={styles.sure}>{beside}</span>
      <span className={styles.open}>See the points</span>
    </button>
  );
}
