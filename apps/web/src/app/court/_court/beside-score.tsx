import type { ByPlayer } from "@courtloom/core";
import type { LaneComparison, LoggedEntry, MatchView } from "@courtloom/match-log";
import Link from "next/link";
import { useMemo } from "react";
import boardStyles from "../../../board/board.module.css";
import { lanesToCompare, rowsToJudge } from "../../../pad/second/lanes-to-compare.ts";
import { countWords, laneWords, placeWords, pointWords } from "../../../pad/second/row-words.ts";
import styles from "./beside-score.module.css";
import type { Chartists } from "./known-chartists.ts";

interface BesideScoreProps {
  readonly entries: readonly LoggedEntry[];
  readonly view: MatchView;
  readonly names: ByPlayer<string>;
  readonly chartists: Chartists;
}

const OTHER_PHONE = "another phone";

function LaneBeside({
  comparison,
  names,
  chartists,
}: Pick<BesideScoreProps, "names" | "chartists"> & { readonly comparison: LaneComparison }) {
  const rows = rowsToJudge(comparison);
  const nameOf = (laneId: string | undefined) => (laneId && chartists[laneId]) || OTHER_PHONE;
  return (
    <li data-testid="lane-beside">
      <h3>{laneWords(comparison, chartists[comparison.laneId])}</h3>
      <p data-testid="lane-counts">{countWords(comparison)}</p>
      {rows.length > 0 && (
        <ul>
          {rows.map((row) => (
            <li key={row.other?.id ?? row.lead?.id}>
              <span>{placeWords(row)}</span>
              <span>
                {row.lead ? `${nameOf(row.lead.laneId)}: ${pointWords(names, row.lead)}` : "Not in the score"}
              </span>
              <span>
                {row.other
                  ? `${nameOf(row.other.laneId)}: ${pointWords(names, row.other)}`
                  : "Not charted there"}
              </span>
            </li>
          ))}
        </ul>
      )}
    </li>
  );
}

/** What other phones charted beside the score, compared with it; merging is done on the pad that leads. */
export function BesideScore({ entries, view, names, chartists }: BesideScoreProps) {
  const comparisons = useMemo(() => lanesToCompare(entries, view), [entries, view]);
  if (comparisons.length === 0) return null;
  const differs = comparisons.some((comparison) => rowsToJudge(comparison).length > 0);
  return (
    <section className={styles.beside} aria-labelledby="beside" data-testid="beside-score">
      <h2 id="beside">Beside the score</h2>
      <ul>
        {comparisons.map((comparison) => (
          <LaneBeside key={comparison.laneId} {...{ comparison, names, chartists }} />
        ))}
      </ul>
      {differs && (
        <p>
          Whoever leads puts points in on the pad, one by one, under More.{" "}
          <Link className={boardStyles.action} href={`/pad?match=${view.matchId}`}>
            Chart this match
          </Link>
        </p>
      )}
    </section>
  );
}
