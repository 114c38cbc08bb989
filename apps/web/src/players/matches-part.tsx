import type { HistoryMatch } from "@courtloom/api";
import Link from "next/link";
import { withDashes } from "../app/court/_court/score-dashes.ts";
import { LEVEL_WORDS } from "../board/tile-words.ts";
import { sayDate } from "../desk/say-date.ts";
import { OPPONENT_WORDS, points, SURFACE_WORDS } from "./history-words.ts";
import styles from "./players.module.css";

const FIRST = 10;

const aboutMatch = (match: HistoryMatch): string =>
  [
    OPPONENT_WORDS[match.opponentLevel],
    match.surface === null ? "" : SURFACE_WORDS[match.surface],
    match.levels.map((level) => LEVEL_WORDS[level]).join(" and "),
    match.chartists.length === 0 ? "" : `charted by ${match.chartists.join(" and ")}`,
    points(match.pointsUsed),
  ]
    .filter(Boolean)
    .join(", ");

function MatchRows({ matches }: { readonly matches: readonly HistoryMatch[] }) {
  return (
    <ul className={styles.matchRows}>
      {matches.map((match) => (
        <li key={match.matchId}>
          <Link href={`/court/${match.matchId}`} prefetch={false}>
            {sayDate(match.playedOn)}, {match.opponent.displayName}
          </Link>
          <span>
            <b>{withDashes(match.score)}</b>
          </span>
          <span className={styles.quiet}>{aboutMatch(match)}</span>
        </li>
      ))}
    </ul>
  );
}

/** The matches that are counted, the latest first, each with the way to its court page. SPEC PF9. */
export function MatchesPart({ matches }: { readonly matches: readonly HistoryMatch[] }) {
  const rest = matches.slice(FIRST);
  return (
    <section className={styles.group} aria-labelledby="matches">
      <h2 id="matches">Matches counted</h2>
      <MatchRows matches={matches.slice(0, FIRST)} />
      {rest.length === 0 ? null : (
        <details className={styles.details}>
          <summary>{rest.length} more</summary>
          <MatchRows matches={rest} />
        </details>
      )}
    </section>
  );
}
