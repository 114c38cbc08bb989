import { type ByPlayer, otherSide } from "@courtloom/core";
import type { Fact, MatchEnded, Point } from "@courtloom/match-log";
import { LEVEL_WORDS } from "../board/tile-words.ts";

const SERVE_WORDS = {
  firstIn: "first serve in",
  secondIn: "second serve in",
  ace: "ace",
  doubleFault: "double fault",
};
const REASON_WORDS = {
  rain: "rain",
  light: "light",
  heat: "heat",
  medical: "treatment",
  other: "another reason",
};

const plural = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"}`;

const pointWords = (names: ByPlayer<string>, point: Point): string => {
  const parts = [`${names[point.winner]} won the point`];
  if (point.serve) parts.push(SERVE_WORDS[point.serve.outcome]);
  if (point.serve?.lets) parts.push(`${plural(point.serve.lets, "let")}`);
  if (point.shots.length > 0) parts.push(`${plural(point.shots.length, "shot")} charted`);
  return parts.join(", ");
};

const endWords = (names: ByPlayer<string>, how: MatchEnded["how"]): string => {
  switch (how.type) {
    case "retired":
      return `${names[how.side]} retired`;
    case "defaulted":
      return `${names[how.side]} was defaulted`;
    case "walkover":
      return `Walkover for ${names[otherSide(how.absent)]}`;
    case "unplayed":
      return "The match was not played";
    case "timeUp":
      return "Time was up";
  }
};

/** What a fact says, in words. */
export const factWords = (names: ByPlayer<string>, fact: Fact): string => {
  switch (fact.kind) {
    case "PointCharted":
      return pointWords(names, fact.point);
    case "PointReplayed":
      return "The point was replayed";
    case "PenaltyGiven":
      return fact.penalty === "warning"
        ? `Warning to ${names[fact.against]}`
        : `Penalty, a ${fact.penalty} against ${names[fact.against]}`;
    case "ScoreStated":
      return fact.missed ? "The score was stated, points were missed" : "The score was stated";
    case "ServerStated":
      return `${names[fact.to]} serves, the ${fact.slip === "players" ? "players'" : "chartist's"} slip`;
    case "EndsStated":
      return `Ends put right: ${names.A} is ${fact.endOfA}${fact.since ? ", from an earlier entry on" : ""}`;
    case "LevelChanged":
      return `Charting ${LEVEL_WORDS[fact.level]} from here`;
    case "SubjectsChanged":
      return fact.subjects.length === 0
        ? "Nobody's choices are charted from here"
        : `Charting ${fact.subjects.map((side) => names[side]).join(" and ")} from here`;
    case "PlaySuspended":
      return `Play was suspended: ${REASON_WORDS[fact.reason]}`;
    case "PlayResumed":
      return "Play went on";
    case "MatchEnded":
      return endWords(names, fact.how);
  }
};
