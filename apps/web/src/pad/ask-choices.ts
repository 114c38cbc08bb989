import type { Ask, OpponentPlace, Shot } from "@courtloom/match-log";
import { seenFrom } from "@courtloom/tennis";
import type { PointFrame } from "./point-draft.ts";
import type { Answer } from "./shot-answer.ts";

export interface AskChoice {
  readonly label: string;
  /** Where the label alone is too short. */
  readonly hint?: string;
  readonly answer: Answer;
}

interface Wide {
  readonly sign: string;
  readonly word: string;
}

/** Which way a wide opponent of the striker's left or right is in the drawing. */
const wideAsDrawn = (place: "wideLeft" | "wideRight", shot: Shot, frame: PointFrame): Wide => {
  const at = { x: place === "wideLeft" ? -4 : 4, y: 9 };
  const { to } = seenFrom({ from: at, to: at }, { ...frame, striker: shot.striker });
  if (frame.seat === "side") return to.away > 0 ? { sign: "↑", word: "far" } : { sign: "↓", word: "near" };
  return to.right < 0 ? { sign: "←", word: "left" } : { sign: "→", word: "right" };
};

const WIDE: readonly Extract<OpponentPlace, "wideLeft" | "wideRight">[] = ["wideLeft", "wideRight"];

const wideChoices = (shot: Shot, frame: PointFrame): AskChoice[] => {
  const choices = WIDE.map((value) => ({ value, ...wideAsDrawn(value, shot, frame) }));
  const first = choices.findIndex(({ word }) => word === "left" || word === "far");
  return (first === 1 ? choices.reverse() : choices).map(({ value, sign, word }) => ({
    label: `Wide ${sign}`,
    hint: `Wide, ${word} in the drawing`,
    answer: { ask: "opponent", value },
  }));
};

/**
 * What each question may be answered with, in the order shown. The opponent's side is asked as drawn, so that
 * nobody has to turn the court in the head, and kept as the striker sees it. SPEC PD27.
 */
export const choicesOf = (ask: Ask, shot: Shot, frame: PointFrame): readonly AskChoice[] => {
  switch (ask) {
    case "ballHeight":
      return [
        { label: "Low", answer: { ask, value: "low" } },
        { label: "Net high", answer: { ask, value: "netHigh" } },
        { label: "Sits up", answer: { ask, value: "sitsUp" } },
        { label: "Jumps", answer: { ask, value: "jumps" } },
      ];
    case "ballTime":
      return [
        { label: "Set", answer: { ask, value: "set" } },
        { label: "Hurried", answer: { ask, value: "hurried" } },
        { label: "Stretched", answer: { ask, value: "stretched" } },
      ];
    case "opponent":
      return [
        { label: "Set", answer: { ask, value: "set" } },
        ...wideChoices(shot, frame),
        { label: "Deep", answer: { ask, value: "deep" } },
        { label: "At net", answer: { ask, value: "net" } },
      ];
    case "cameIn":
      return [
        { label: "Came in", answer: { ask, value: true } },
        { label: "Stayed", answer: { ask, value: false } },
      ];
    case "hesitated":
      return [
        { label: "Changed the mind", answer: { ask, value: true } },
        { label: "Did not", answer: { ask, value: false } },
      ];
  }
};
