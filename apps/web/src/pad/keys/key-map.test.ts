import { readStroke } from "@courtloom/tennis";
import { describe, expect, it } from "vitest";
import { type DraftEvent, type DraftState, EMPTY_STATE, reduceDraft } from "../draft-reducer.ts";
import type { PointFrame } from "../point-draft.ts";
import { COURT_CELLS, cellOf, placeOfCell, sayCell } from "./court-cells.ts";
import { actionsOf, KEY_MAP, KEY_PARTS, type PadAction } from "./key-map.ts";
import { ariaKey, keyName, shownKey } from "./key-names.ts";
import { pointActions } from "./point-actions.ts";

const every: PointFrame = { server: "A", seat: "behind", endOfA: "near" };
const key: PointFrame = { ...every, subject: "A" };

const after = (frame: PointFrame, events: readonly DraftEvent[]): DraftState =>
  events
    .map((event) => (event.type === "drew" ? { ...event, frame } : event))
    .reduce(reduceDraft, EMPTY_STATE);

const ball = (frame: PointFrame): DraftEvent => ({
  type: "drew",
  from: { right: 300, away: -1240 },
  to: { right: -280, away: 900 },
  frame,
});

const MOMENTS: readonly (readonly [string, readonly DraftEvent[]])[] = [
  ["before the serve", []],
  ["after a fault", [{ type: "served", outcome: "fault" }]],
  ["in play", [{ type: "served", outcome: "in" }]],
  ["drawn", [{ type: "served", outcome: "in" }, ball(every)]],
  ["counted", [{ type: "served", outcome: "in" }, ball(every), { type: "satUp", by: 1 }]],
  [
    "missed",
    [ball(every), { type: "endingChosen", ending: { type: "missed", miss: "net" }, chosen: undefined }],
  ],
  ["a ball open", [ball(every), { type: "opened", what: 0 }]],
  ["the serve open", [ball(every), { type: "opened", what: "serve" }]],
];

describe("the table of keys", () => {
  it("[PD64] has each action once, in a part that is shown", () => {
    expect(new Set(KEY_MAP.map(({ action }) => action)).size).toBe(KEY_MAP.length);
    for (const { part } of KEY_MAP) expect(KEY_PARTS).toContain(part);
  });

  it.each(MOMENTS)("[PD64] lets every key mean at most one thing: %s", (_, events) => {
    for (const frame of [every, key]) {
      const state = after(frame, events);
      const send = () => undefined;
      const possible = Object.keys(pointActions({ state, frame, send })) as PadAction[];
      const always: PadAction[] = ["done", "undo", "more", "replay", "swapEnds", "nextLevel", "otherCourt"];
      const names = [...possible, ...always].map((action) => {
        const found = KEY_MAP.find((each) => each.action === action);
        if (!found) throw new Error(`${action} has no key`);
        return shownKey(found);
      });
      expect(new Set(names).size, names.join(" ")).toBe(names.length);
    }
  });

  it("[PD64, PD65] draws with no key that does something else", () => {
    for (const { code, shift } of KEY_MAP) if (!shift) expect(cellOf(code), code).toBeUndefined();
    expect(new Set(COURT_CELLS.map(({ code }) => code)).size).toBe(18);
  });

  it("[PD66] finds the question mark by its sign, other keys by their place", () => {
    expect(actionsOf({ code: "Minus", key: "?", shift: true })).toEqual(["keyMap"]);
    expect(actionsOf({ code: "KeyP", key: "P", shift: true })).toEqual(["satUpLess"]);
    expect(actionsOf({ code: "KeyR", key: "р", shift: false })).toEqual(["replay"]);
    expect(actionsOf({ code: "F5", key: "F5", shift: false })).toEqual([]);
  });

  it("[PD64] names keys as this keyboard has them, and to screen readers", () => {
    expect(keyName("KeyQ", new Map([["KeyQ", "a"]]))).toBe("A");
    expect(KEY_MAP.map(ariaKey)).toEqual(expect.arrayContaining(["Enter", "Shift+P", "1", "?", "ArrowLeft"]));
  });
});

describe("a ball drawn by keys", () => {
  const read = (frame: PointFrame, struck: string, went: string) => {
    const [a, b] = [cellOf(struck), cellOf(went)];
    if (!a || !b) throw new Error("not a letter of the court");
    const from = placeOfCell(a, frame.seat, "struck");
    return readStroke({ ...frame, striker: "A", from, to: placeOfCell(b, frame.seat, "went") });
  };

  it("[PD65] is in, with the direction and depth that the letters lie at", () => {
    expect(read(every, "KeyZ", "KeyO")).toMatchObject({ direction: "cross", ended: "in", landing: "deep" });
    expect(read(every, "KeyZ", "KeyU")).toMatchObject({ direction: "line", ended: "in", landing: "deep" });
    expect(read(every, "KeyX", "KeyK")).toMatchObject({ ended: "in", landing: "mid" });
    expect(read(every, "KeyZ", "Comma")).toMatchObject({
      direction: "middle",
      ended: "in",
      landing: "short",
    });
  });

  it("[PD65] lies as the court does from the side too", () => {
    const side: PointFrame = { server: "A", seat: "side", endOfA: "left" };
    expect(read(side, "KeyQ", "KeyO")).toMatchObject({ direction: "line", ended: "in", landing: "deep" });
    expect(read(side, "KeyQ", "KeyU")).toMatchObject({ direction: "line", landing: "short" });
    expect(read(side, "KeyZ", "KeyO")).toMatchObject({ direction: "cross", landing: "deep" });
  });

  it("[PD65] is certain to be in from every letter to every other half's", () => {
    for (const seat of ["behind", "side"] as const) {
      const frame: PointFrame = { server: "A", seat, endOfA: seat === "side" ? "left" : "near" };
      for (const a of COURT_CELLS.filter(({ half }) => half === "first"))
        for (const b of COURT_CELLS.filter(({ half }) => half === "second"))
          expect(read(frame, a.code, b.code).ended, `${a.code} ${b.code}`).toBe("in");
    }
  });

  it("[PD65] is said where it was struck", () => {
    const said = (code: string, seat: "behind" | "side") => {
      const cell = cellOf(code);
      return cell && sayCell(cell, seat);
    };
    expect(said("KeyZ", "behind")).toBe("near left, at the baseline");
    expect(said("Comma", "behind")).toBe("far middle, short");
    expect(said("KeyQ", "side")).toBe("left end, far side, at the baseline");
  });
});
