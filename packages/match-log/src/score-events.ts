import type { ScoreEvent } from "@courtloom/tennis";
import type { Fact, MatchEnded } from "./entry.ts";

const ending = (how: MatchEnded["how"]): ScoreEvent => {
  switch (how.type) {
    case "retired":
      return { type: "retire", side: how.side };
    case "defaulted":
      return { type: "default", side: how.side };
    case "walkover":
      return { type: "walkover", absent: how.absent };
    case "unplayed":
      return { type: "unplayed" };
    case "timeUp":
      return { type: "timeUp", policy: how.policy };
  }
};

/** What a fact does to the score; `undefined` when it does nothing. SPEC L6. */
export const scoreEventOf = (fact: Fact): ScoreEvent | undefined => {
  switch (fact.kind) {
    case "PointCharted":
      return { type: "point", winner: fact.point.winner };
    case "PenaltyGiven":
      if (fact.penalty === "warning") return undefined;
      return { type: fact.penalty === "point" ? "pointPenalty" : "gamePenalty", against: fact.against };
    case "ScoreStated":
      return { type: "setScore", ...fact.score };
    case "ServerStated":
      return { type: "setServer", to: fact.to };
    case "MatchEnded":
      return ending(fact.how);
    default:
      return undefined;
  }
};
