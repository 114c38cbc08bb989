import { foldLog } from "@courtloom/match-log";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { type DraftEvent, type DraftState, EMPTY_STATE, reduceDraft } from "./draft-reducer.ts";
import { draftFor, keepDraft, parseDrafts } from "./kept-draft.ts";
import { EMPTY_DRAFT, type PointFrame } from "./point-draft.ts";
import { matchOpened } from "./testing/match-opened.ts";
import { momentOf } from "./use-draft.ts";

const frame: PointFrame = { server: "A", seat: "behind", endOfA: "near" };
const fault = reduceDraft(EMPTY_STATE, { type: "served", outcome: "fault" });
const twoSteps = reduceDraft(fault, {
  type: "drew",
  from: { right: 0, away: 1_200 },
  to: { right: 0, away: -900 },
  frame,
});
const state = { draft: twoSteps.draft, past: twoSteps.past };

beforeEach(() => {
  const held = new Map<string, string>();
  vi.stubGlobal("localStorage", {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, value: string) => void held.set(key, value),
  });
  return () => vi.unstubAllGlobals();
});

describe("a half-charted point", () => {
  it("[PD20] is taken up where it was, with every step that undo goes back through", () => {
    expect(keepDraft("lane-1", { moment: "15–0", state })).toBe(true);
    const held = draftFor("lane-1", "15–0");
    if (!held) throw new Error("it was kept");
    const resumed = reduceDraft(EMPTY_STATE, { type: "resumed", ...held });
    expect(resumed).toEqual(twoSteps);
    const once = reduceDraft(resumed, { type: "tookBack" });
    expect(once.draft).toEqual(fault.draft);
    expect(reduceDraft(once, { type: "tookBack" }).draft).toEqual(EMPTY_DRAFT);
  });

  it("[PD30] comes back with its answers, its count and what was said, as stored", () => {
    const key = { ...frame, subject: "A" } as const;
    const steps = [
      { type: "drew", from: { right: 300, away: -1_200 }, to: { right: 280, away: 900 }, frame: key },
      { type: "answered", place: 0, answer: { ask: "ballHeight", value: "sitsUp" } },
      { type: "satUp", by: 1 },
      { type: "leftOutChosen", reason: "netCord" },
      { type: "endingChosen", ending: { type: "undrawn", winner: "B" }, chosen: undefined },
    ] as const satisfies readonly DraftEvent[];
    const { draft, past } = steps.reduce<DraftState>(reduceDraft, EMPTY_STATE);
    keepDraft("lane-1", { moment: "15–0", state: { draft, past } });
    const held = draftFor("lane-1", "15–0");
    expect(held).toEqual({ draft, past });
    expect(held?.past).toHaveLength(steps.length);
  });

  it("[PD20] belongs to one lane and one moment of its match", () => {
    keepDraft("lane-1", { moment: "15–0", state });
    expect(draftFor("lane-1", "30–0")).toBeUndefined();
    expect(draftFor("lane-2", "15–0")).toBeUndefined();
    keepDraft("lane-1", { moment: "30–0", state });
    expect(draftFor("lane-1", "15–0")).toBeUndefined();
    keepDraft("lane-1", undefined);
    expect(draftFor("lane-1", "30–0")).toBeUndefined();
  });

  it("[PD20] is kept for the four matches charted last", () => {
    for (const lane of ["1", "2", "3", "4", "5"]) keepDraft(lane, { moment: "0–0", state });
    expect(["1", "2", "5"].map((lane) => draftFor(lane, "0–0") !== undefined)).toEqual([false, true, true]);
  });

  it("[PD20] is let go when what is stored cannot be read, and lasts as long as the page without storage", () => {
    for (const stored of [
      null,
      "",
      "{",
      "7",
      "null",
      '[{"laneId":"a"}]',
      '[{"laneId":"a","moment":"b","state":{}}]',
    ])
      expect([stored, parseDrafts(stored)]).toEqual([stored, []]);
    vi.stubGlobal("localStorage", {
      getItem: () => {
        throw new Error("forbidden");
      },
      setItem: () => {
        throw new Error("forbidden");
      },
    });
    expect(draftFor("lane-1", "15–0")).toBeUndefined();
    expect(keepDraft("lane-1", { moment: "15–0", state })).toBe(false);
  });

  it("[PD20] belongs to a score, a point and a seat: any other is another moment", () => {
    const body = matchOpened;
    const view = foldLog([
      { pos: 1, laneId: "desk", epoch: 1, entry: { v: 1, id: "e0", n: 1, atMs: 0, wallMs: 0, body } },
    ]);
    if (!view.ok) throw new Error(view.error);
    const here = momentOf(view.value, frame);
    expect(momentOf({ ...view.value, pos: 9 }, { ...frame })).toBe(here);
    const games = { ...view.value.score, games: [1, 0] as const };
    const others = [
      momentOf({ ...view.value, score: games }, frame),
      momentOf(view.value, { ...frame, endOfA: "far" }),
      momentOf(view.value, { ...frame, server: "B" }),
      momentOf(view.value, { ...frame, subject: "A" }),
    ];
    expect(new Set([here, ...others]).size).toBe(5);
  });
});
