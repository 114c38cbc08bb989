import type { BehindBall, FigurePoint } from "@courtloom/api";
import type { Choice } from "@courtloom/decisions";
import type { ShotResult } from "@courtloom/match-log";
import { KIND_WORDS } from "../app/court/_court/shot-words.ts";
import { facetsSentence } from "../plan/facet-words.ts";

const CHOICE_WORDS: Readonly<Record<Choice, string>> = {
  kept: "kept",
  line: "down the line",
  cross: "cross-court",
  middle: "to the middle",
  fromMiddle: "from the middle to a side",
};

const RESULT_WORDS: Readonly<Record<ShotResult, string>> = {
  winner: "winner",
  forced: "forced a miss",
  weak: "weak reply",
  in: "in play",
  missed: "missed",
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const resultOf = ({ missed, result }: BehindBall): string => {
  if (missed) return "missed";
  return result ? RESULT_WORDS[result] : "";
};

/** A ball in a sentence: "Groundstroke behind the baseline, from the left, the ball sits up: down the line, missed". */
export const ballWords = (ball: BehindBall): string => {
  const place = facetsSentence({
    depth: [ball.depth],
    side: [ball.side],
    ...(ball.ballHeight ? { ballHeight: [ball.ballHeight] } : {}),
    ...(ball.ballTime ? { ballTime: [ball.ballTime] } : {}),
    ...(ball.opponent ? { opponent: [ball.opponent] } : {}),
  });
  const after = [ball.choice ? CHOICE_WORDS[ball.choice] : "direction not charted", resultOf(ball)];
  return `${capital(KIND_WORDS[ball.kind])} ${place}: ${after.filter(Boolean).join(", ")}`;
};

/** What became of a point, from the player's side; empty where it counts in no figure of points won. */
export const wonWords = ({ won }: Pick<FigurePoint, "won">): string => {
  if (won === null) return "";
  return won ? "won the point" : "lost the point";
};
