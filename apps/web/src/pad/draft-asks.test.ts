import type { Shot, ShotAsks } from "@courtloom/match-log";
import { seenFrom } from "@courtloom/tennis";
import { describe, expect, it } from "vitest";
import { choicesOf } from "./ask-choices.ts";
import { type Asking, askedPlace, asksOfDraft, openAsks } from "./draft-asks.ts";
import { EMPTY_STATE, reduceDraft } from "./draft-reducer.ts";
import { finishPoint } from "./finish-point.ts";
import { EMPTY_DRAFT, type PointDraft, type PointFrame } from "./point-draft.ts";

const frame: PointFrame = { server: "A", seat: "behind", endOfA: "near", subject: "A" };
const asks: ShotAsks = { line: ["ballHeight", "opponent"], short: ["ballHeight", "cameIn"] };
const asking: Asking = { asks, subjects: ["A"] };
/** A shot by its ends in the striker's metres; a touch without the second. */
const shot = (
  from: readonly [number, number],
  to?: readonly [number, number],
  more: Partial<Shot> = {},
): Shot => {
  const striker = more.striker ?? "A";
  const at = { x: from[0], y: from[1] };
  const seen = seenFrom({ from: at, to: to ? { x: to[0], y: to[1] } : at }, { ...frame, striker });
  return { striker, from: seen.from, ...(to ? { to: seen.to } : {}), ...more };
};
const draftOf = (...shots: Shot[]): PointDraft => ({ ...EMPTY_DRAFT, serve: "firstIn", shots });
const line = shot([3, -12], [2.8, 9]);
const cross = shot([3, -12], [-2.8, 9]);
const short = shot([3, -5], [-2.8, 9]);
const asked = (...shots: Shot[]) => asksOfDraft(draftOf(...shots), frame, asking);

describe("what is asked of a ball", () => {
  it("[PD27] of line balls and of balls struck inside the service line, each question once", () => {
    expect(asked(line, cross, short, shot([3, -5]), shot([3, -12]), shot([3, -5], [2.8, 9]))).toEqual([
      ["ballHeight", "opponent"],
      [],
      ["ballHeight", "cameIn"],
      // A second ball in a row from inside is a volley, in the air.
      [],
      [],
      ["ballHeight", "opponent", "cameIn"],
    ]);
  });

  it("[PD27] of charted players alone, of groundstrokes down the line, and nothing where the match asks nothing", () => {
    expect(asked({ ...line, striker: "B" }, { ...line, kind: "lob" })).toEqual([[], []]);
    const receiving = { ...frame, server: "B" } as const;
    expect(asksOfDraft(draftOf(line, line), receiving, asking)).toEqual([[], ["ballHeight", "opponent"]]);
    expect(asksOfDraft(draftOf(line), frame, { asks: undefined, subjects: ["A"] })).toEqual([[]]);
    expect(asksOfDraft(draftOf(line), frame, { asks, subjects: [] })).toEqual([[]]);
  });

  it("[PD28] opens by itself only once the point has ended, and then the newest that asks", () => {
    const draft = draftOf(line, short, cross);
    const each = asked(line, short, cross);
    expect(askedPlace(draft, frame, undefined, each)).toBeUndefined();
    const ended: PointDraft = { ...draft, said: { type: "winner" } };
    expect(askedPlace(ended, frame, undefined, each)).toBe(1);
    expect(askedPlace(ended, frame, 0, each)).toBe(0);
    expect(askedPlace(ended, frame, "serve", each)).toBeUndefined();
    expect(
      askedPlace({ ...draftOf(cross), said: { type: "winner" } }, frame, undefined, [[]]),
    ).toBeUndefined();
  });
});

describe("answers", () => {
  const start = { ...EMPTY_STATE, draft: draftOf(line) };
  const low = { type: "answered", place: 0, answer: { ask: "ballHeight", value: "low" } } as const;
  const stayed = { type: "answered", place: 0, answer: { ask: "cameIn", value: false } } as const;

  it("[PD28] nothing is answered beforehand; a second touch takes an answer back, another replaces it", () => {
    expect(openAsks(line, ["ballHeight", "opponent"])).toBe(2);
    const once = reduceDraft(start, low);
    expect(once.draft.shots[0]).toEqual({ ...line, ballHeight: "low" });
    expect(openAsks({ ...line, ballHeight: "low" }, ["ballHeight", "opponent"])).toBe(1);
    expect(reduceDraft(once, low).draft.shots[0]).toEqual(line);
    const other = { ...low, answer: { ask: "ballHeight", value: "jumps" } } as const;
    expect(reduceDraft(once, other).draft.shots[0]?.ballHeight).toBe("jumps");
    expect(reduceDraft(once, { type: "tookBack" }).draft).toEqual(start.draft);
    expect(reduceDraft(start, stayed).draft.shots[0]?.cameIn).toBe(false);
    expect(reduceDraft(start, { ...low, place: 7 })).toBe(start);
  });

  it("[PD28] keep an opened ball open, and go with the ball to another player only as unknown", () => {
    const open = reduceDraft(start, { type: "opened", what: 0 });
    const answered = reduceDraft(open, low);
    expect(answered.opened).toBe(0);
    expect(reduceDraft(answered, { type: "strikerChanged" }).draft.shots[0]).toEqual({
      ...line,
      striker: "B",
    });
  });

  it("[PD28] never keep a point from being done", () => {
    const said = { type: "endingChosen", ending: { type: "winner" }, chosen: undefined } as const;
    const unanswered = finishPoint(reduceDraft(start, said).draft, frame);
    expect(unanswered?.shots[0]).toEqual({ ...line, result: "winner" });
    const answered = finishPoint(reduceDraft(reduceDraft(start, low), said).draft, frame);
    expect(answered?.shots[0]).toEqual({ ...line, ballHeight: "low", result: "winner" });
  });

  it("[PD27] ask for a wide opponent as drawn and keep what the striker sees", () => {
    const wide = (seen: PointFrame, striker: "A" | "B") =>
      choicesOf("opponent", { ...line, striker }, seen)
        .slice(1, 3)
        .map(({ label, answer }) => [label, answer.value]);
    expect(wide(frame, "A")).toEqual([
      ["Wide ←", "wideLeft"],
      ["Wide →", "wideRight"],
    ]);
    expect(wide(frame, "B")).toEqual([
      ["Wide ←", "wideRight"],
      ["Wide →", "wideLeft"],
    ]);
    expect(wide({ ...frame, seat: "side", endOfA: "left" }, "A")).toEqual([
      ["Wide ↑", "wideLeft"],
      ["Wide ↓", "wideRight"],
    ]);
  });
});
