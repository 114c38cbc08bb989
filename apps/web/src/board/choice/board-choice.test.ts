import type { Tile, TileAlert } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { type BoardChoice, EVERYTHING, standsOut, withId } from "./board-choice.ts";
import { choiceOn, keepChoice, readKept } from "./kept-choice.ts";

const tileWith = (alerts: readonly TileAlert["state"][] = []): Tile =>
  ({
    courtId: "court-4",
    staff: {
      playerIds: { A: "noor", B: "elsbeth" },
      alerts: alerts.map((state) => ({ side: "A", state, since: null })),
    },
  }) as unknown as Tile;
const under = (choice: Partial<BoardChoice>) => ({ ...EVERYTHING, ...choice });

describe("which courts stand out", () => {
  it("[BD43] all of them, until something is chosen", () => {
    expect(standsOut(tileWith(), EVERYTHING)).toBe(true);
  });

  it("[BD43] the chosen courts, and the courts of chosen players on either side", () => {
    expect(standsOut(tileWith(), under({ filter: "courts", courts: ["court-4"] }))).toBe(true);
    expect(standsOut(tileWith(), under({ filter: "courts", players: ["noor"] }))).toBe(false);
    expect(standsOut(tileWith(), under({ filter: "players", players: ["elsbeth"] }))).toBe(true);
    expect(standsOut(tileWith(), under({ filter: "players", players: ["kaito"] }))).toBe(false);
    const { staff: _, ...publicTile } = tileWith();
    expect(standsOut(publicTile, under({ filter: "players", players: ["noor"] }))).toBe(false);
  });

  it("[BD43] with alerts alone, those that stand or ease; what was only noticed or withdrawn is silent", () => {
    const alerts = under({ filter: "alerts" });
    expect(standsOut(tileWith(["standing"]), alerts)).toBe(true);
    expect(standsOut(tileWith(["noticed", "easing"]), alerts)).toBe(true);
    expect(standsOut(tileWith(["noticed", "withdrawn"]), alerts)).toBe(false);
    expect(standsOut(tileWith(), alerts)).toBe(false);
  });

  it("[BD43] puts an id in and out of a list once", () => {
    expect(withId(["a", "b"], "a", true)).toEqual(["b", "a"]);
    expect(withId(["a", "b"], "a", false)).toEqual(["b"]);
  });
});

describe("what a device keeps of a choice", () => {
  it("[BD44] filter and players for all days, courts for their own day", () => {
    const choice: BoardChoice = { filter: "courts", courts: ["c1"], players: ["noor"] };
    const kept = readKept(JSON.stringify(keepChoice(readKept(null), "day-1", choice)));
    expect(choiceOn(kept, "day-1")).toEqual(choice);
    expect(choiceOn(kept, "day-2")).toEqual({ ...choice, courts: [] });
  });

  it("[BD44] the courts of the ten newest days", () => {
    let kept = readKept(null);
    for (let day = 1; day <= 12; day += 1) kept = keepChoice(kept, `day-${day}`, under({ courts: ["c1"] }));
    expect(kept.days.map(({ dayId }) => dayId)).toEqual(
      [12, 11, 10, 9, 8, 7, 6, 5, 4, 3].map((day) => `day-${day}`),
    );
  });

  it.each([
    "",
    "{",
    "7",
    "null",
    '{"filter":"toString","players":[1,null],"days":[{},7,{"dayId":1,"courts":[]}]}',
  ])("[BD44] nothing that it cannot read: %j", (text) => {
    expect(readKept(text)).toEqual({ filter: "all", players: [], days: [] });
  });
});
