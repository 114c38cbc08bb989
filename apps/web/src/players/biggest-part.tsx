"use client";
import type { HistoryMatch, MatchFiguresFile, SizedPoint } from "@courtloom/api";
import { otherSide } from "@courtloom/core";
import { keepPreviousData, useQuery } from "@tanstack/react-query";
import Link from "next/link";
import { useState } from "react";
import { withDashes } from "../app/court/_court/score-dashes.ts";
import { useTRPC } from "../client/trpc.ts";
import { sayDate } from "../desk/say-date.ts";
import { Field } from "../form/field.tsx";
import styles from "./players.module.css";
import { ReadState } from "./read-state.tsx";
import { READING } from "./reading-options.ts";
import { turnedScore } from "./turned-score.ts";

interface LineProps {
  readonly point: SizedPoint;
  readonly match: HistoryMatch;
}

function BigPoint({ point, match }: LineProps) {
  const { side, matchId } = match;
  const score = side === "A" ? point.score : turnedScore(point.score);
  return (
    <li className={styles.point}>
      <p>
        <b>{withDashes(score)}</b>, {point.server === side ? "serving" : "receiving"}:{" "}
        {point.winner === otherSide(side) ? "lost the point" : "won the point"}
      </p>
      <p className={styles.quiet}>
        number {point.rank} of {point.of} points by how much of the match rested on it
      </p>
      <Link className={styles.toCourt} href={`/court/${matchId}?point=${point.pointId}`} prefetch={false}>
        Court page<span className="vh">, point {point.pointNo}</span>
      </Link>
    </li>
  );
}

function Biggest({ file, match }: { readonly file: MatchFiguresFile; readonly match: HistoryMatch }) {
  const byId = new Map(file.points.map((point) => [point.pointId, point]));
  const biggest = file.biggest.flatMap((id) => byId.get(id) ?? []);
  if (biggest.length === 0) return <p>No point of this match is charted.</p>;
  return (
    <ol className={styles.pointList} data-testid="biggest">
      {biggest.map((point) => (
        <BigPoint key={point.pointId} point={point} match={match} />
      ))}
    </ol>
  );
}

interface BiggestPartProps {
  /** Of the filter, the latest first; at least one. */
  readonly matches: readonly HistoryMatch[];
}

/** The points of one match that decided most of it. SPEC PF11. */
export function BiggestPart({ matches }: BiggestPartProps) {
  const [chosen, setChosen] = useState<string>();
  const trpc = useTRPC();
  const match = matches.find(({ matchId }) => matchId === chosen) ?? matches[0];
  const reading = useQuery(
    trpc.figures.match.queryOptions(
      { matchId: match?.matchId ?? "" },
      { ...READING, enabled: match !== undefined, placeholderData: keepPreviousData },
    ),
  );
  if (match === undefined) return null;
  return (
    <section className={styles.group} aria-labelledby="biggest">
      <h2 id="biggest">The biggest points</h2>
      <p className={styles.quiet}>
        By how much of the match rested on them. A rank, as the chances behind it are not sure.
      </p>
      <Field label="Match">
        {(control) => (
          <select {...control} value={match.matchId} onChange={(event) => setChosen(event.target.value)}>
            {matches.map(({ matchId, playedOn, opponent }) => (
              <option key={matchId} value={matchId}>
                {sayDate(playedOn)}, {opponent.displayName}
              </option>
            ))}
          </select>
        )}
      </Field>
      <ReadState what="the biggest points" reading={reading}>
        {(file) => (file.matchId === match.matchId ? <Biggest file={file} match={match} /> : null)}
      </ReadState>
    </section>
  );
}
