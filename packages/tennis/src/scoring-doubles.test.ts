import { describe, expect, it } from "vitest";
import { format, games, level, play, points, refusal, STANDARD } from "../test-support/play.ts";
import type { ScoreSetup } from "./score-board.ts";
import { startScore } from "./score-board.ts";
import type { ScoreEvent } from "./score-event.ts";

const PAIRS: ScoreSetup = {
  format: STANDARD,
  firstServer: "A",
  doublesOrder: ["A1", "B1", "A2", "B2"],
};
const player = (...events: ScoreEvent[]) => play(PAIRS, events).state.serverPlayer;

describe("doubles", () => {
  it("[SC35] rotates through the order game by game and on into the next set", () => {
    const order = [0, 1, 2, 3, 4].map((n) => player(...games("A".repeat(n))));
    expect(order).toEqual(["A1", "B1", "A2", "B2", "A1"]);
    expect(player(...games("AAAAAA"))).toBe("A2");
  });

  it("[SC35] starts with the pair that serves first, whichever side it is", () => {
    const setup: ScoreSetup = { ...PAIRS, firstServer: "B", doublesOrder: ["B2", "A1", "B1", "A2"] };
    expect(play(setup).state).toMatchObject({ server: "B", serverPlayer: "B2" });
    expect(play(setup, games("A")).state).toMatchObject({ server: "A", serverPlayer: "A1" });
  });

  it("[SC35] counts a tie-break as one service game of the player who opened it", () => {
    const after = play(PAIRS, level(6), points("AAAAAAA"));
    expect(after.state).toMatchObject({ server: "B", serverPlayer: "B1" });
    expect(play(PAIRS, level(6), points("AAAAAAA"), games("A")).state.serverPlayer).toBe("A2");
  });

  it("[SC35] never skips a player when a side is put right", () => {
    const swapped: ScoreEvent = { type: "setServer", to: "B" };
    expect(player(swapped)).toBe("B1");
    expect(player(swapped, ...games("A"))).toBe("A1");
    expect(player(swapped, ...games("AA"))).toBe("B2");
  });

  it("[SC35] works out the player from a stated score", () => {
    expect(player({ type: "setScore", games: [3, 2] })).toBe("B1");
    expect(player({ type: "setScore", games: [2, 0] })).toBe("A2");
  });

  it("[SC35] names nobody after the end, and in singles never", () => {
    expect(play(PAIRS, { type: "unplayed" }).state).not.toHaveProperty("serverPlayer");
    expect(play(STANDARD).state).not.toHaveProperty("serverPlayer");
  });

  it("[SC36] takes a new order at the start of a set", () => {
    const set: ScoreEvent[] = games("AAAAAA");
    const renamed: ScoreEvent[] = [...set, { type: "setOrder", order: ["A2", "B2", "A1", "B1"] }];
    expect(player(...renamed)).toBe("A2");
    expect(player(...renamed, ...games("A"))).toBe("B2");
    const change: ScoreEvent[] = [...set, { type: "setOrder", order: ["A1", "B1", "A2", "B2"] }];
    expect(player(...change)).toBe("A1");
    expect(play(PAIRS, change).state.pause).toBe("set");
  });

  it("[SC36] takes a new order before a match tie-break", () => {
    const mtb: ScoreSetup = { ...PAIRS, format: format({ finalSet: { kind: "matchTiebreak", to: 10 } }) };
    const board = play(mtb, games("AAAAAABBBBBB"), { type: "setOrder", order: ["A2", "B1", "A1", "B2"] });
    expect(board.state).toMatchObject({ matchTieBreak: true, serverPlayer: "A2" });
    expect(
      play(mtb, games("AAAAAABBBBBB"), { type: "setOrder", order: ["A2", "B1", "A1", "B2"] }, points("AAA"))
        .state.serverPlayer,
    ).toBe("A1");
  });

  it("[SC36] refuses an order in singles, within a set, or that mixes the pairs", () => {
    const order = ["A2", "B2", "A1", "B1"];
    expect(refusal(play(STANDARD), { type: "setOrder", order }).code).toBe("not_doubles");
    expect(refusal(play(PAIRS, points("A")), { type: "setOrder", order }).code).toBe("not_set_start");
    for (const wrong of [
      ["B1", "A1", "B2", "A2"],
      ["A1", "A2", "B1", "B2"],
      ["A1", "B1", "A1", "B2"],
      ["A1"],
    ])
      expect(refusal(play(PAIRS), { type: "setOrder", order: wrong }).code).toBe("bad_order");
  });

  it("[SC35] refuses an order that is not four different names", () => {
    for (const doublesOrder of [
      ["A1", "B1"],
      ["A1", "B1", "A1", "B2"],
    ])
      expect(startScore({ ...PAIRS, doublesOrder })).toMatchObject({
        ok: false,
        error: { code: "bad_doubles_order" },
      });
  });
});
