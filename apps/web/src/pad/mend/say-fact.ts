import { type ByPlayer, otherSide, type Side } from "@courtloom/core";
import type { Fact, Point } from "@courtloom/match-log";
import { factWords } from "../../match-words/fact-words.ts";

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

/** What a fact says on the pad: "Noor, winner, 3 balls", "Point penalty against Elsbeth". */
export const sayFact = (names: ByPlayer<string>, fact: Fact): string => {
  switch (fact.kind) {
    case "PointCharted":
      return pointWords(fact.point, names);
    case "PointReplayed":
      return "Point replayed, nothing counts";
    case "PenaltyGiven":
      if (fact.penalty === "warning") return `Warning, ${names[fact.against]}`;
      return `${fact.penalty === "point" ? "Point" : "Game"} penalty against ${names[fact.against]}`;
    case "ScoreStated":
      return fact.missed ? "Not charted until here" : "Score set";
    case "ServerStated":
      return `${names[fact.to]} serves, ${fact.slip === "players" ? "players’ slip" : "chartist’s slip"}`;
    default:
      return factWords(names, fact);
  }
};
