import type { WatchedPlayer, WatchFile } from "@courtloom/api";
import { RATES } from "@courtloom/match-log";
import { tooFewWords, usualWords, WATCHED_WORDS } from "./watch-words.ts";
import styles from "./watches.module.css";

interface UsualListProps {
  readonly file: WatchFile;
  readonly player: WatchedPlayer;
}

/** What a match that is opened now would take as usual for a player, rate by rate. */
export function UsualList({ file, player }: UsualListProps) {
  return (
    <dl className={styles.usual}>
      {RATES.map((rate) => {
        const usual = player.usual[rate];
        return (
          <div key={rate}>
            <dt>{WATCHED_WORDS[rate].label}</dt>
            <dd>{usual ? usualWords(rate, usual) : tooFewWords(rate, file.charted[rate], file.needed)}</dd>
          </div>
        );
      })}
    </dl>
  );
}
