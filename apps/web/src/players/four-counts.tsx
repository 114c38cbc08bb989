import type { FigureName } from "@courtloom/decisions";
import { FigureButton } from "./figure-button.tsx";
import type { FigureKey } from "./figure-key.ts";
import type { FiguresByName } from "./figures-by-name.ts";
import styles from "./players.module.css";

/** Made beside missed, right above wrong. */
export const FOUR_COUNTS: readonly FigureName[] = ["rightMade", "rightMissed", "wrongMade", "wrongMissed"];

interface FourCountsProps {
  readonly playerName: string;
  readonly figures: FiguresByName;
  readonly open: (figure: FigureKey) => void;
}

/** Choice and stroke apart: right or wrong by the plan, made or missed, of all balls judged. SPEC PF5. */
export function FourCounts({ playerName, figures, open }: FourCountsProps) {
  return (
    <div className={styles.four} data-testid="four-counts">
      {FOUR_COUNTS.map((figure) => (
        <FigureButton
          key={figure}
          playerName={playerName}
          figure={{ figure }}
          rate={figures[figure]}
          usual={figures[figure].usual}
          open={open}
        />
      ))}
    </div>
  );
}
