import type { ByPlayer } from "@courtloom/core";
import type { Direction, StrokeKind } from "@courtloom/tennis";
import type { CourtShot } from "./court-shots.ts";

export const KIND_WORDS = {
  groundstroke: "groundstroke",
  return: "return",
  approach: "approach",
  passing: "passing shot",
  volley: "volley",
  overhead: "overhead",
  lob: "lob",
  drop: "drop shot",
} satisfies Record<StrokeKind, string>;

export const DIRECTION_WORDS = {
  line: "down the line",
  cross: "cross-court",
  middle: "to the middle",
  fromMiddle: "from the middle to a side",
} satisfies Record<Direction, string>;

const RESULT_WORDS = {
  winner: "winner",
  forced: "forced a miss",
  weak: "weak reply",
  in: "in play",
  missed: "missed",
};

/** What became of a shot, as far as somebody said. */
const outcome = ({ read }: CourtShot): string => {
  if (read.shot.miss) return `, missed, ${read.shot.miss}`;
  return read.shot.result ? `, ${RESULT_WORDS[read.shot.result]}` : "";
};

/** One shot in words: "Noor V.: groundstroke down the line, missed, wide". What nobody said is left out. */
export const shotWords = (names: ByPlayer<string>, shot: CourtShot): string => {
  const kind = KIND_WORDS[shot.read.kind];
  const where = shot.direction ? ` ${DIRECTION_WORDS[shot.direction]}` : ", direction not charted";
  const left = shot.read.shot.leftOut ? ", left out of the figures" : "";
  return `${names[shot.side]}: ${kind}${where}${outcome(shot)}${left}`;
};
