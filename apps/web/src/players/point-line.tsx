import type { FigurePoint } from "@courtloom/api";
import Link from "next/link";
import { withDashes } from "../app/court/_court/score-dashes.ts";
import { LEVEL_WORDS } from "../board/tile-words.ts";
import { VERDICT_WORDS } from "../plan/verdict-words.ts";
import { ballWords, wonWords } from "./ball-words.ts";
import styles from "./players.module.css";

interface PointLineProps {
  readonly row: FigurePoint;
  /** Which of the two counts it is in: "of the 10". */
  readonly tag: string;
}

/** One ball, point or moment behind a figure, with its score, its verdict and the way to its court page. SPEC PF8. */
export function PointLine({ row, tag }: PointLineProps) {
  const { ball, hit, isServing, level, matchId, pointId, pointNo, score } = row;
  const after = [wonWords(row), ball ? VERDICT_WORDS[ball.verdict].toLowerCase() : ""].filter(Boolean);
  return (
    <li className={styles.point} data-testid="point" data-hit={hit}>
      <span className={styles.hit}>{tag}</span>
      <p>
        <b>{withDashes(score)}</b>, {isServing ? "serving" : "receiving"}
        <span className={styles.quiet}>
          {" "}
          (point {pointNo}, {LEVEL_WORDS[level]})
        </span>
      </p>
      {ball ? <p>{ballWords(ball)}</p> : null}
      <p>{after.length > 0 ? after.join("; ") : null}</p>
      <Link className={styles.toCourt} href={`/court/${matchId}?point=${pointId}`} prefetch={false}>
        Court page<span className="vh">, point {pointNo}</span>
      </Link>
    </li>
  );
}
