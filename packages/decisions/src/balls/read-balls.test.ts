import { byPlayer } from "@courtloom/core";
import { foldLog } from "@courtloom/match-log";
import { makeLog, openedWith, pointTo } from "@courtloom/match-log/testing";
import { describe, expect, it } from "vitest";
import { ballsOf } from "../figures/balls-of.ts";
import { DEUCE_CORNER, drawn, LEFT_DEEP, RIGHT_DEEP, touch } from "../testing/drawn.ts";
import { every, matchWith } from "../testing/match-with.ts";
import type { Ball } from "./ball.ts";
import { readBalls } from "./read-balls.ts";

const SERVE = { outcome: "firstIn", faults: 0 } as const;
const returned = drawn("B", DEUCE_CORNER, LEFT_DEEP);

const balls = (...changes: Parameters<typeof pointTo>[1][]): readonly Ball[] => {
  const points = changes.map((change) => pointTo("A", { level: "every", serve: SERVE, ...change }));
  const view = foldLog(makeLog(points, openedWith()));
  if (!view.ok) throw new Error(view.error);
  const hands = byPlayer((side) => view.value.opened.players[side].hand);
  return view.value.points.flatMap((point) => readBalls(point, hands));
};

describe("a counted ball", () => {
  it("[D12] tells its situation and choice; what nobody answered is unknown", () => {
    const line = drawn("A", DEUCE_CORNER, RIGHT_DEEP, { ballHeight: "sitsUp", result: "winner" });
    expect(balls({ shots: [returned, line] })[1]).toEqual({
      pointId: "00000000-0000-4000-8000-000000000002",
      place: 1,
      striker: "A",
      level: "every",
      kind: "groundstroke",
      choice: "line",
      isChange: true,
      cameIn: undefined,
      hesitated: undefined,
      result: "winner",
      missed: false,
      depth: "behindBaseline",
      side: "right",
      strokeSide: "forehand",
      ballHeight: "sitsUp",
      ballTime: undefined,
      opponent: undefined,
      incoming: { direction: "cross", landing: "mid" },
      phase: "opening",
      judgement: { verdict: "open", ruleId: undefined, because: { code: "noPlan" } },
    });
  });

  it("[D12] answers no ball that was not charted just before it, and at key balls none", () => {
    const line = drawn("A", DEUCE_CORNER, RIGHT_DEEP);
    const key = balls({ level: "key", shots: [touch("A", DEUCE_CORNER), line] });
    expect(key.map(({ choice, incoming, phase }) => [choice, incoming, phase])).toEqual([
      ["kept", undefined, undefined],
      ["line", undefined, undefined],
    ]);
    expect(balls({ shots: [returned, line, line] })[2]?.incoming).toBeUndefined();
  });

  it("[D12] knows how long the rally is, the serve counted", () => {
    const shots = Array.from({ length: 8 }, (_, i) => drawn(i % 2 ? "A" : "B", DEUCE_CORNER, LEFT_DEEP));
    expect(balls({ shots }).map(({ phase }) => phase)).toEqual([
      ...["opening", "opening", "opening"],
      ...["building", "building", "building", "building"],
      "long",
    ]);
  });

  it("[D4, D10] leaves out what the net cord decided, players not charted at key balls, and score only", () => {
    const cord = drawn("A", DEUCE_CORNER, RIGHT_DEEP, { leftOut: "netCord" });
    expect(balls({ shots: [returned, cord] }).map(({ striker }) => striker)).toEqual(["B"]);
    expect(balls({ level: "key", shots: [returned] })).toEqual([]);
    expect(balls({ level: "score", shots: [returned] })).toEqual([]);
  });

  it("[D12] of a match comes with what the plan says", () => {
    const low = { ballHeight: "low", opponent: "set" } as const;
    const view = matchWith([every("A", [returned, drawn("A", DEUCE_CORNER, RIGHT_DEEP, low)])]);
    expect(ballsOf(view).map(({ judgement }) => judgement.verdict)).toEqual(["open", "offPlan"]);
  });
});
