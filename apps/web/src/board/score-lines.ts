import { type ByPlayer, byPlayer, otherSide, type Side } from "@courtloom/core";
import type { TileScore } from "@courtloom/protocol";
import type { FinishedSet } from "@courtloom/tennis";

/** A finished set from one side. `tiebreak`: this side's points in its tie-break, given for the loser only. */
export interface SetCell {
  /** Which set, from 1. */
  readonly no: number;
  readonly games: number;
  readonly tiebreak: number | null;
  readonly won: boolean;
}

/** One side's line of a score as a board shows it. Games and points are null where there are none to show. */
export interface ScoreLine {
  readonly sets: readonly SetCell[];
  readonly games: number | null;
  readonly points: string | null;
  readonly serves: boolean;
}

const cellOf = (set: FinishedSet, no: number, side: Side): SetCell => {
  const [mine, theirs] = side === "A" ? [set[0], set[1]] : [set[1], set[0]];
  const won = mine > theirs;
  const loserPoints = set[2];
  return { no, games: mine, tiebreak: !won && typeof loserPoints === "number" ? loserPoints : null, won };
};

/** Both sides' lines. A match that is over has sets only; a match tie-break has points and no games. */
export const scoreLines = (score: TileScore): ByPlayer<ScoreLine> => {
  const over = score.status !== "playing";
  return byPlayer((side) => ({
    sets: score.sets.map((set, i) => cellOf(set, i + 1, side)),
    games: unfinishedGames(score, over, side),
    points: over ? null : score.points[side],
    serves: !over && score.server === side,
  }));
};

/** A match cut short shows the games of the set it ended in; a set just begun is not shown then. */
const unfinishedGames = (score: TileScore, over: boolean, side: Side): number | null => {
  if (score.matchTieBreak) return null;
  const [a, b] = score.games;
  if (over && (score.status === "completed" || a + b === 0)) return null;
  return side === "A" ? a : b;
};

const setWords = (line: ScoreLine): string =>
  [...line.sets.map((set) => String(set.games)), line.games, line.points]
    .filter((part) => part !== null)
    .join(" ");

/** The whole score in one sentence, for those who do not see it: "Noor V. 6 3 30, Elsbeth K. 4 2 15, Noor V. serves". */
export const scoreSentence = (names: ByPlayer<string>, score: TileScore): string => {
  const lines = scoreLines(score);
  const said = (["A", "B"] as const).map((side) => `${names[side]} ${setWords(lines[side])}`.trim());
  const server = score.status === "playing" && score.server ? [`${names[score.server]} serves`] : [];
  return [...said, ...server].join(", ");
};

/** How a match that is over ended; null while it is played. */
export const endWords = (names: ByPlayer<string>, score: TileScore): string | null => {
  const { winner, status } = score;
  const won = winner ? `${names[winner]} won` : null;
  const lost = winner ? names[otherSide(winner)] : null;
  switch (status) {
    case "playing":
      return null;
    case "completed":
      return won ?? "Drawn";
    case "retired":
      return lost ? `${won}, ${lost} retired` : "Retired";
    case "defaulted":
      return lost ? `${won}, ${lost} defaulted` : "Defaulted";
    case "walkover":
      return won ? `${won} by walkover` : "Walkover";
    case "unplayed":
      return "Not played";
    case "timeUp":
      return won ? `${won}, time was up` : "Drawn, time was up";
  }
};
