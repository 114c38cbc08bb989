import { type ByPlayer, otherSide, type Side } from "@courtloom/core";
import { describePoints, describeSets, type ScoreState } from "@courtloom/tennis";

const DASH = "–";
const dashed = (text: string) => text.replaceAll("-", DASH);

/** The points of one side as they stand on the score line: "0", "15", "30", "40", "Ad", or the tie-break's number. */
export const pointsOf = (state: ScoreState, side: Side): string => {
  const own = describePoints(state, side).split("-")[0] ?? "";
  return own === "ad" ? "Ad" : own;
};

const SIDE_WORDS = {
  deuce: "from the right",
  ad: "from the left",
  "receiver-chooses": "receiver chooses the side",
} as const;

/** Where the next point is served from: "from the right"; empty once the match is over. */
export const sayServiceSide = (state: ScoreState): string => (state.side ? SIDE_WORDS[state.side] : "");

/** The points as they are called, the server's first: "30–15", "Deuce", "Advantage Noor"; empty once it is over. */
export const sayCall = (state: ScoreState, names: ByPlayer<string>): string => {
  const { call, server } = state;
  if (server === null) return "";
  if (call === "ad-in") return `Advantage ${names[server]}`;
  if (call === "ad-out") return `Advantage ${names[otherSide(server)]}`;
  if (call === "deuce") return "Deuce";
  if (call === "deciding") return "Deciding point";
  return dashed(call);
};

const setOf = (state: ScoreState, winner: Side): string =>
  dashed(
    describeSets({ ...state, games: [0, 0], over: true }, winner)
      .split(" ")
      .at(-1) ?? "",
  );

/**
 * The score after a point, as it is said before it is confirmed: "30–15, next from the left",
 * "Game Noor, 3–2", "Set Noor, 6–4", "Match Noor, 6–4 6–3". `before` tells what has changed.
 */
export const sayNextScore = (before: ScoreState, after: ScoreState, names: ByPlayer<string>): string => {
  if (after.winner) return `Match ${names[after.winner]}, ${dashed(describeSets(after, after.winner))}`;
  for (const side of ["A", "B"] as const) {
    const i = side === "A" ? 0 : 1;
    if (after.setsWon[i] > before.setsWon[i]) return `Set ${names[side]}, ${setOf(after, side)}`;
    if (after.sets.length === before.sets.length && after.games[i] > before.games[i])
      return `Game ${names[side]}, ${after.games[i]}${DASH}${after.games[1 - i]}`;
  }
  const side = sayServiceSide(after);
  return side ? `${sayCall(after, names)}, next ${side}` : sayCall(after, names);
};

/** Which number of the score line a point has changed, the biggest that did: the one to look at. */
export const changedPart = (
  before: ScoreState,
  after: ScoreState,
): { readonly part: "points" | "games" | "sets"; readonly side: Side } | undefined => {
  for (const side of ["A", "B"] as const) {
    const i = side === "A" ? 0 : 1;
    if (after.setsWon[i] > before.setsWon[i]) return { part: "sets", side };
    if (after.sets.length === before.sets.length && after.games[i] > before.games[i])
      return { part: "games", side };
  }
  for (const side of ["A", "B"] as const)
    if (pointsOf(after, side) !== pointsOf(before, side)) return { part: "points", side };
  return undefined;
};
