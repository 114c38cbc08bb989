import type { ByPlayer } from "@courtloom/core";
import type { LaneComparison, LaneRow, ViewedPoint } from "@courtloom/match-log";
import { scoreWords } from "./score-words.ts";

const SERVES = { firstIn: "1st in", secondIn: "2nd in", ace: "ace", doubleFault: "double fault" } as const;
const MISSES = { net: "in the net", wide: "wide", long: "long" } as const;

const endingWords = (names: ByPlayer<string>, { point }: ViewedPoint): string | undefined => {
  const last = point.shots.at(-1);
  if (!last?.result) return undefined;
  if (last.result === "missed")
    return `${names[last.striker]} missed${last.miss ? ` ${MISSES[last.miss]}` : ""}`;
  return last.result === "winner" ? `winner ${names[last.striker]}` : undefined;
};

/** What somebody charted of a point: "Noor, 1st in, Elsbeth missed long, 4 balls". */
export const pointWords = (names: ByPlayer<string>, viewed: ViewedPoint): string => {
  const { point } = viewed;
  const balls = point.shots.length === 1 ? "1 ball" : `${point.shots.length} balls`;
  const parts = [
    names[point.winner],
    point.serve && SERVES[point.serve.outcome],
    endingWords(names, viewed),
    point.shots.length > 0 ? balls : undefined,
  ];
  return parts.filter((part) => part !== undefined).join(", ");
};

/** The score at which a point was played, as the lead has it, else as the other one. */
export const placeWords = ({ lead, other }: LaneRow): string => {
  const viewed = lead ?? other;
  return viewed ? `At ${scoreWords(viewed.before)}` : "";
};

const points = (count: number): string => (count === 1 ? "1 point" : `${count} points`);

/** "20 points: 17 same, 2 differ, 1 only there". What there is none of is left out. */
export const countWords = ({ counts, pointCount }: LaneComparison): string => {
  const parts = [
    [counts.same, "same"],
    [counts.differs, counts.differs === 1 ? "differs" : "differ"],
    [counts.laneOnly, "only there"],
    [counts.leadOnly, "only in the score"],
  ] as const;
  const said = parts.filter(([count]) => count > 0).map(([count, word]) => `${count} ${word}`);
  return `${points(pointCount)}: ${said.join(", ")}`;
};

/** Who a lane is, for one who may not know: "Maren H., second". */
export const laneWords = ({ role }: Pick<LaneComparison, "role">, name: string | undefined): string =>
  `${name ?? "Another phone"}, ${role === "second" ? "second" : "after the take-over"}`;

/** "M. H." stays readable on a button: the first name, or "theirs". */
export const theirWords = (name: string | undefined): string =>
  name === undefined ? "theirs" : `${name.split(" ")[0]}’s`;
