import { type ByPlayer, SIDES, type Side } from "@courtloom/core";
import type { TileScore } from "@courtloom/protocol";
import { ServerDisc } from "../loom/server-disc.tsx";
import { type ScoreLine, type SetCell, scoreLines, scoreSentence } from "./score-lines.ts";
import styles from "./tile-score.module.css";

function SetScore({ cell }: { readonly cell: SetCell }) {
  return (
    <span className={cell.won ? styles.setWon : styles.set}>
      {cell.games}
      {cell.tiebreak === null ? null : <sup>{cell.tiebreak}</sup>}
    </span>
  );
}

function Line({
  name,
  own,
  line,
}: {
  readonly name: string;
  readonly own: boolean;
  readonly line?: ScoreLine;
}) {
  return (
    <div className={own ? styles.ownLine : styles.line}>
      <span className={styles.serves}>{line?.serves ? <ServerDisc named={false} /> : null}</span>
      <span className={styles.name}>{name}</span>
      {line?.sets.map((cell) => (
        <SetScore key={cell.no} cell={cell} />
      ))}
      {line && line.games !== null ? <span className={styles.games}>{line.games}</span> : null}
      {line && line.points !== null ? <span className={styles.points}>{line.points}</span> : null}
    </div>
  );
}

export interface ScoreTableProps {
  readonly names: ByPlayer<string>;
  readonly own: ByPlayer<boolean> | null;
  /** Null before the first point. */
  readonly score: TileScore | null;
}

/** Names and score of a court: sets, games, points, and a disc for the server. In words for those who do not see it. */
export function ScoreTable({ names, own, score }: ScoreTableProps) {
  const lines = score ? scoreLines(score) : undefined;
  const lineOf = (side: Side) => {
    const line = lines?.[side];
    return <Line key={side} name={names[side]} own={own?.[side] ?? false} {...(line ? { line } : {})} />;
  };
  return (
    <div className={styles.score}>
      <p className="vh" data-testid="score">
        {score ? scoreSentence(names, score) : `${names.A} against ${names.B}, no score yet`}
      </p>
      <div aria-hidden="true">{SIDES.map(lineOf)}</div>
    </div>
  );
}
