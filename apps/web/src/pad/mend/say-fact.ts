import { type ByPlayer, otherSide, type Side } from "@courtloom/core";
import type { Fact, MatchEnded, PenaltyGiven, PlaySuspended, Point } from "@courtloom/match-log";
import { LEVEL_LABELS } from "../status-bar.tsx";

const LEFT_OUT_WORDS = { netCord: "net cord", calledOut: "called out" } as const;

/** How a point was won, as far as it was charted; the winner's name is said before it. */
const howWon = ({ winner, level, serve, shots }: Point, names: ByPlayer<string>): string => {
  const server: Side = serve?.outcome === "ace" ? winner : otherSide(winner);
  if (serve?.outcome === "ace") return "ace";
  if (serve?.outcome === "doubleFault") return `double fault ${names[server]}`;
  const last = shots.at(-1);
  if (last?.leftOut) return LEFT_OUT_WORDS[last.leftOut];
  if (last?.result === "winner") return "winner";
  if (last?.result === "forced") return "forced a miss";
  if (last?.result === "missed") return `${names[last.striker]} ${last.miss ?? "missed"}`;
  return level === "score" ? "not seen" : "last ball not drawn";
};

const pointWords = (point: Point, names: ByPlayer<string>): string => {
  const balls = point.shots.length;
  const counted = balls === 0 ? "" : `, ${balls === 1 ? "1 ball" : `${balls} balls`}`;
  return `${names[point.winner]}, ${howWon(point, names)}${counted}`;
};

const REASON_WORDS: Readonly<Record<PlaySuspended["reason"], string>> = {
  rain: "rain",
  light: "light",
  heat: "heat",
  medical: "treatment",
  other: "another reason",
};

const endWords = (how: MatchEnded["how"], names: ByPlayer<string>): string => {
  switch (how.type) {
    case "retired":
      return `${names[how.side]} retired`;
    case "defaulted":
      return `${names[how.side]} was defaulted`;
    case "walkover":
      return `Walkover, ${names[how.absent]} absent`;
    case "unplayed":
      return "Not played to its end";
    case "timeUp":
      return "Time was up";
  }
};

const penaltyWords = ({ penalty, against }: PenaltyGiven, names: ByPlayer<string>): string => {
  if (penalty === "warning") return `Warning, ${names[against]}`;
  return `${penalty === "point" ? "Point" : "Game"} penalty against ${names[against]}`;
};

/** What a fact says on the pad: "Noor, winner, 3 balls", "Point penalty against Elsbeth". */
export const sayFact = (names: ByPlayer<string>, fact: Fact): string => {
  switch (fact.kind) {
    case "PointCharted":
      return pointWords(fact.point, names);
    case "PointReplayed":
      return "Point replayed, nothing counts";
    case "PenaltyGiven":
      return penaltyWords(fact, names);
    case "ScoreStated":
      return fact.missed ? "Not charted until here" : "Score set";
    case "ServerStated":
      return `${names[fact.to]} serves, ${fact.slip === "players" ? "players’ slip" : "chartist’s slip"}`;
    case "EndsStated":
      return `Ends put right, ${names.A} ${fact.endOfA}`;
    case "LevelChanged":
      return `${LEVEL_LABELS[fact.level]} from here`;
    case "SubjectsChanged":
      return `Charted from here: ${fact.subjects.map((side) => names[side]).join(" and ") || "nobody"}`;
    case "PlaySuspended":
      return `Suspended: ${REASON_WORDS[fact.reason]}`;
    case "PlayResumed":
      return "Play went on";
    case "MatchEnded":
      return endWords(fact.how, names);
  }
};
