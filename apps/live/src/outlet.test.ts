import { describe, expect, it } from "vitest";
import { createOutlet } from "./outlet.ts";

const tile = (courtId: string, pos: number) => ({ dayId: "d1", serverMs: pos, tile: { courtId, pos } });
const entries = (pos: number) => ({ matchId: "m1", incarnation: "i", entries: [{ pos }] });

const wire = () => {
  const sent: [string, unknown][] = [];
  const state = { behind: false };
  const outlet = createOutlet({
    emit: (event, message) => void sent.push([event, message]),
    isBehind: () => state.behind,
  });
  return { sent, state, outlet };
};

describe("what a slow reader gets", () => {
  it("[LV14] everything at once while it keeps up", () => {
    const { sent, outlet } = wire();
    outlet.send("board.tile", tile("c1", 1));
    outlet.send("board.tile", tile("c1", 2));
    expect(sent).toHaveLength(2);
  });

  it("[LV14] the latest of each court, match and phone when there is room again, and no more", () => {
    const { sent, state, outlet } = wire();
    state.behind = true;
    for (let pos = 1; pos <= 1_000; pos += 1) {
      outlet.send("board.tile", tile(pos % 2 === 0 ? "c1" : "c2", pos));
      outlet.send("court.entries", entries(pos));
      const heard = [{ matchId: pos % 2 === 0 ? "m1" : "m2", heardMs: pos, unsent: 0 }];
      outlet.send("board.heard", { dayId: "d1", serverMs: pos, heard });
    }
    outlet.flush();
    expect(sent).toEqual([]);
    state.behind = false;
    outlet.flush();
    expect(sent).toEqual([
      ["court.entries", entries(1_000)],
      ["board.tile", tile("c2", 999)],
      ["board.tile", tile("c1", 1_000)],
      [
        "board.heard",
        {
          dayId: "d1",
          serverMs: 1_000,
          heard: [
            { matchId: "m2", heardMs: 999, unsent: 0 },
            { matchId: "m1", heardMs: 1_000, unsent: 0 },
          ],
        },
      ],
    ]);
    outlet.flush();
    expect(sent).toHaveLength(4);
  });

  it("[LV14, AL23] the latest list of alerts of each day, and every notice", () => {
    const { sent, state, outlet } = wire();
    state.behind = true;
    const key = (episode: number) => ({ matchId: "m1", episode });
    for (let i = 1; i <= 50; i += 1) {
      outlet.send("alerts.list", { dayId: i % 2 === 0 ? "d1" : "d2", serverMs: i, alerts: [] });
      if (i % 25 === 0) outlet.send("alerts.notices", { dayId: "d1", notices: [key(i)] });
    }
    state.behind = false;
    outlet.flush();
    expect(sent).toEqual([
      ["alerts.list", { dayId: "d2", serverMs: 49, alerts: [] }],
      ["alerts.list", { dayId: "d1", serverMs: 50, alerts: [] }],
      ["alerts.notices", { dayId: "d1", notices: [key(25), key(50)] }],
    ]);
  });
});
