import type { MatchStatus } from "./score-state.ts";

/** Why an event cannot follow on a score. */
export type ScoreError =
  /** Only `undo` is possible. */
  | { readonly code: "match_over"; readonly status: MatchStatus }
  | { readonly code: "nothing_to_undo"; readonly asked: number; readonly available: number }
  | {
      readonly code: "impossible_score";
      readonly member: "sets" | "games" | "points";
      readonly reason: string;
    }
  /** A walkover after a point. */
  | { readonly code: "already_begun" }
  | { readonly code: "not_doubles" }
  | { readonly code: "not_set_start" }
  | { readonly code: "bad_order"; readonly reason: string };

/** A sentence for a person that says what to do instead. */
export function scoreErrorText(error: ScoreError): string {
  switch (error.code) {
    case "match_over":
      return `the match is over (${error.status}): undo its end first`;
    case "nothing_to_undo":
      return `cannot undo ${error.asked}: undo a whole number from 1 to ${error.available}, as many as there are events`;
    case "impossible_score":
      return `${error.member}: ${error.reason}`;
    case "already_begun":
      return "a match that has begun is retired or defaulted, not a walkover";
    case "not_doubles":
      return "only doubles has an order of service within a pair: start the score with doublesOrder";
    case "not_set_start":
      return "the order of service can be named before the first point of a set only";
    case "bad_order":
      return `the order of service ${error.reason}`;
  }
}
