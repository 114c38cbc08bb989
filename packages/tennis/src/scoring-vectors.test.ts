import { readFileSync } from "node:fs";
import type { Side } from "@courtloom/core";
import { describe, expect, it } from "vitest";
import { applyScore } from "./apply-score.ts";
import type { MatchFormat } from "./format.ts";
import { type ScoreBoard, startScore } from "./score-board.ts";
import type { ScoreEvent } from "./score-event.ts";
import type { ScoreState } from "./score-state.ts";

interface VectorCase {
  readonly id: string;
  readonly title: string;
  readonly format: MatchFormat;
  readonly firstServer: Side;
  readonly doublesOrder?: readonly string[];
  readonly events: readonly ScoreEvent[];
  readonly initial: ScoreState;
  readonly states: readonly ScoreState[];
  readonly handChecked: readonly (readonly [number, keyof ScoreState, unknown])[];
}

const file = new URL("../../../shared/vectors/scoring-edge.jsonl", import.meta.url);
const cases = readFileSync(file, "utf8")
  .split("\n")
  .filter((line) => line !== "")
  .map((line) => JSON.parse(line) as VectorCase);

function boardsOf(vector: VectorCase): ScoreBoard[] {
  const start = startScore(vector);
  if (!start.ok) throw new Error(JSON.stringify(start.error));
  const boards: ScoreBoard[] = [start.value];
  for (const event of vector.events) {
    const next = applyScore(boards.at(-1) ?? start.value, event);
    if (!next.ok) throw new Error(`${vector.id}: ${JSON.stringify(next.error)}`);
    boards.push(next.value);
  }
  return boards;
}

describe("[SC1] edge cases of scoring, every state whole", () => {
  it("has read the file", () => expect(cases.length).toBe(48));

  it.each(cases)("$id $title", (vector) => {
    const states = boardsOf(vector).map((board) => board.state);
    expect(states[0]).toStrictEqual(vector.initial);
    expect(states.slice(1)).toStrictEqual(vector.states);
    for (const [index, member, value] of vector.handChecked) expect(states[index]?.[member]).toEqual(value);
  });
});
