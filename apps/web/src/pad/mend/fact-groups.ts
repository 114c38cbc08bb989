import type { ByPlayer } from "@courtloom/core";
import { type MatchView, type TimelineFact, timelineOf } from "@courtloom/match-log";
import type { ScoreState } from "@courtloom/tennis";
import { SET_ASIDE_WORDS } from "../../match-words/set-aside-words.ts";
import { sayCall, sayNextScore } from "../say-score.ts";
import { isSameScore, scoreWords } from "../second/score-words.ts";
import { sayFact } from "./say-fact.ts";

/** One fact of the match, ready to be shown. */
export interface FactRow {
  readonly id: string;
  /** "Noor, winner, 3 balls". */
  readonly words: string;
  /** The points as called before it, the server's first; empty once the match is over. */
  readonly before: string;
  /** What they became; absent where it changed nothing. */
  readonly after?: string;
  /** Who charted it, why it does not count, whether it was mended: each said once. */
  readonly notes: readonly string[];
  readonly counts: boolean;
}

/** A game's facts under its score. */
export interface FactGroup {
  readonly key: string;
  readonly title: string;
  readonly rows: readonly FactRow[];
}

export interface FactReading {
  readonly names: ByPlayer<string>;
  readonly laneId: string;
  readonly nameOf: (laneId: string) => string | undefined;
}

const titleOf = (score: ScoreState, names: ByPlayer<string>): string => {
  if (score.over) return "After the match";
  const set = `Set ${score.sets.length + 1}`;
  if (score.matchTieBreak) return `${set}, tie-break`;
  const games = `${names.A} ${score.games[0]}–${score.games[1]} ${names.B}`;
  if (score.tieBreak) return `${set}, ${games}, tie-break`;
  return `${set}, ${games}${score.server ? `, ${names[score.server]} serves` : ""}`;
};

const notesOf = (row: TimelineFact, { laneId, nameOf }: FactReading): readonly string[] => [
  ...(row.voided ? ["taken out"] : []),
  ...(row.setAside ? [`set aside: ${SET_ASIDE_WORDS[row.setAside]}`] : []),
  ...(row.sayings?.slice(1).some(({ voided }) => !voided) ? ["mended"] : []),
  ...(row.laneId === laneId ? [] : [`by ${nameOf(row.laneId) ?? "another phone"}`]),
];

const afterOf = ({ before, after, fact }: TimelineFact, names: ByPlayer<string>): string | undefined => {
  if (isSameScore(before, after)) return undefined;
  if (fact.kind === "ScoreStated" || fact.kind === "MatchEnded") return scoreWords(after);
  if (fact.kind === "ServerStated") return sayCall(after, names);
  return sayNextScore(before, after, names).split(", next")[0];
};

const rowOf = (row: TimelineFact, reading: FactReading): FactRow => {
  const after = afterOf(row, reading.names);
  return {
    id: row.id,
    words: sayFact(reading.names, row.fact),
    before: sayCall(row.before, reading.names),
    ...(after ? { after } : {}),
    notes: notesOf(row, reading),
    counts: !row.voided && row.setAside === undefined,
  };
};

/** Every fact of the match, newest first, under the game that it is in. SPEC PD80. */
export const factGroups = (view: MatchView, reading: FactReading): readonly FactGroup[] => {
  const groups: { key: string; title: string; rows: FactRow[] }[] = [];
  let title = "";
  for (const row of timelineOf(view)) {
    const here = titleOf(row.before, reading.names);
    // A server put right within a game leaves the game one group, under its first server.
    const game = here.replace(/, [^,]* serves$/, "");
    if (game !== title) groups.push({ key: row.id, title: here, rows: [] });
    title = game;
    groups.at(-1)?.rows.push(rowOf(row, reading));
  }
  return groups.map((group) => ({ ...group, rows: group.rows.toReversed() })).toReversed();
};
