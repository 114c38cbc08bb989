import { describe, expect, it } from "vitest";
import { wordsForMoment } from "./words-for-moment.ts";

const SAID = { words: "Build first.", sentence: "Wait for it.", question: "Which ball?" };
const PLAY = { endsDue: false, over: false };
const CHANGE = { endsDue: true, over: false };

describe("what a staff pad shows of the plan", () => {
  it("[CM10] is the plan's words between points, and the sentence and the question at a change of ends", () => {
    expect(wordsForMoment(SAID, PLAY, true)).toEqual({ at: "between", words: "Build first." });
    expect(wordsForMoment(SAID, CHANGE, true)).toEqual({
      at: "change",
      sentence: "Wait for it.",
      question: "Which ball?",
    });
  });

  it("[CM10] is one of the two where the other is empty, and the plan's words where both are", () => {
    expect(wordsForMoment({ ...SAID, question: "" }, CHANGE, true)).toMatchObject({
      at: "change",
      question: "",
    });
    const bare = { ...SAID, sentence: "", question: "" };
    expect(wordsForMoment(bare, CHANGE, true)).toEqual({ at: "between", words: "Build first." });
  });

  it("[CM10] is nothing without words, after the match, and no change before the first point", () => {
    expect(wordsForMoment({ words: "", sentence: "S.", question: "" }, PLAY, true)).toBeUndefined();
    expect(wordsForMoment(SAID, { endsDue: true, over: true }, true)).toBeUndefined();
    expect(wordsForMoment(SAID, CHANGE, false)).toMatchObject({ at: "between" });
  });
});
