import type { Ask, Shot } from "@courtloom/match-log";
import { useState } from "react";
import { type AskChoice, choicesOf } from "../ask-choices.ts";
import type { DraftEvent } from "../draft-reducer.ts";
import type { PointFrame } from "../point-draft.ts";
import type { PadActions } from "./use-keys.ts";

/** The ball whose questions are on the screen. */
export interface AskedBall {
  readonly shot: Shot;
  readonly place: number;
  readonly asks: readonly Ask[];
}

const ANSWERS = ["answer1", "answer2", "answer3", "answer4", "answer5"] as const;

const CAPTIONS: Readonly<Record<Ask, string>> = {
  ballHeight: "Ball",
  ballTime: "Time",
  opponent: "Opponent",
  cameIn: "After",
  hesitated: "Mind",
};

/** "Time: 1 Set, 2 Hurried, 3 Stretched". */
const sayQuestion = (ask: Ask, choices: readonly AskChoice[]): string =>
  `${CAPTIONS[ask]}: ${choices.map(({ label }, i) => `${i + 1} ${label}`).join(", ")}`;

/**
 * Answers by keys the question that a person went to, else the first that nobody answered. Going to one says
 * it with its answers' numbers.
 */
export const useQuestion = (
  asked: AskedBall | undefined,
  {
    frame,
    send,
    say,
  }: {
    readonly frame: PointFrame;
    readonly send: (event: DraftEvent) => void;
    readonly say: (message: string) => void;
  },
): PadActions => {
  const [wanted, setWanted] = useState<{ readonly place: number; readonly ask: Ask }>();
  if (!asked || asked.asks.length === 0) return {};
  const { shot, place, asks } = asked;
  const found = asks.findIndex((ask) => wanted?.place === place && wanted.ask === ask);
  const open = asks.findIndex((ask) => shot[ask] === undefined);
  const at = found >= 0 ? found : Math.max(0, open);
  const ask = asks[at];
  if (!ask) return {};
  const goTo = (to: number) => () => {
    const next = asks[(to + asks.length) % asks.length];
    if (!next) return;
    setWanted({ place, ask: next });
    say(sayQuestion(next, choicesOf(next, shot, frame)));
  };
  const answers = choicesOf(ask, shot, frame).map(({ answer }, i) => [
    ANSWERS[i],
    () => {
      setWanted(undefined);
      send({ type: "answered", place, answer });
    },
  ]);
  // Before anybody moved, the arrows lead to the question that answers go to.
  const [before, after] = found < 0 ? [at, at] : [at - 1, at + 1];
  return { ...Object.fromEntries(answers), questionBefore: goTo(before), questionAfter: goTo(after) };
};
