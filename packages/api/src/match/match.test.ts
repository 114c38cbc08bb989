import { parseFormat } from "@courtloom/tennis";
import { describe, expect, it } from "vitest";
import { makeApi } from "../testing/make-api.ts";
import { seedDay } from "../testing/seed-day.ts";
import { describeFormat } from "./describe-format.ts";
import { FORMAT_PRESETS } from "./format-presets.ts";

const fresh = (name: string, own = false) => ({ name, hand: "unknown" as const, own });

const start = async () => {
  const api = await makeApi();
  const academyId = await api.setup();
  const ids = await seedDay(api, academyId);
  const place = { dayId: ids.dayId, courtId: ids.courtId, format: "oneSet" };
  return { api, ids, place, director: api.callerAs("director", academyId), rows: api.memory.rows };
};

describe("matches", () => {
  it("[AP8, CM6] coaching is not known unless it is said, and can be said anew while it is charted", async () => {
    const { director, rows, ids } = await start();
    expect((await director.match.get({ matchId: ids.matchId })).coachingMode).toBe("notKnown");
    await director.match.setCoachingMode({ matchId: ids.matchId, coachingMode: "permitted" });
    expect((await director.match.get({ matchId: ids.matchId })).coachingMode).toBe("permitted");
    rows.matches = rows.matches.map((match) => ({ ...match, stage: "open" }));
    await director.match.setCoachingMode({ matchId: ids.matchId, coachingMode: "notPermitted" });
    expect((await director.match.get({ matchId: ids.matchId })).coachingMode).toBe("notPermitted");
    expect(rows.audit.filter(({ action }) => action === "match.setCoachingMode")).toHaveLength(2);
  });

  it("[AP9] charts the academy's own singles players, and no choices in doubles", async () => {
    const { director, place } = await start();
    const both = await director.match.add({
      ...place,
      sides: { A: [fresh("Jun D.", true)], B: [fresh("Signe F.", true)] },
    });
    expect(await director.match.get(both)).toMatchObject({
      subjects: ["A", "B"],
      bothOwn: true,
      doubles: false,
    });
    const pairs = await director.match.add({
      ...place,
      sides: { A: [fresh("a", true), fresh("b")], B: [fresh("c"), fresh("d")] },
    });
    const shown = await director.match.get(pairs);
    expect(shown).toMatchObject({ subjects: [], doubles: true, names: { A: "a / b", B: "c / d" } });
  });

  it("[AP9] leaves nothing behind when it is refused", async () => {
    const { api, director, place, rows } = await start();
    const before = api.writeCount();
    const known = rows.players[0]?.playerId ?? "";
    const elsewhere = "00000000-0000-4000-8000-000000000000";
    const refused = [
      { ...place, sides: { A: [fresh("x")], B: [fresh("X")] } },
      { ...place, sides: { A: [{ playerId: known }], B: [{ playerId: known }] } },
      { ...place, sides: { A: [fresh("x")], B: [{ playerId: elsewhere }] } },
      { ...place, sides: { A: [fresh("x"), fresh("y")], B: [fresh("z")] } },
      { ...place, courtId: elsewhere, sides: { A: [fresh("x")], B: [fresh("y")] } },
      { ...place, dayId: elsewhere, sides: { A: [fresh("x")], B: [fresh("y")] } },
      { ...place, format: "noSuchFormat", sides: { A: [fresh("x")], B: [fresh("y")] } },
      { ...place, format: { sets: 2 }, sides: { A: [fresh("x")], B: [fresh("y")] } },
    ];
    for (const input of refused) await expect(director.match.add(input)).rejects.toThrow();
    expect(api.writeCount()).toBe(before);
  });

  it("[AP9] puts a new name on the list and takes one on it by id", async () => {
    const { director, place, rows } = await start();
    const known = rows.players.find((player) => player.displayName === "Noor V.");
    const count = rows.players.length;
    await director.match.add({
      ...place,
      sides: { A: [{ playerId: known?.playerId ?? "" }], B: [fresh(" Visitor\u0020 slate ")] },
    });
    expect(rows.players).toHaveLength(count + 1);
    expect(rows.players.at(-1)?.displayName).toBe("Visitor slate");
  });

  it("[AP9] every named format is one that the scoring accepts, and is called by its name", () => {
    for (const { label, format } of Object.values(FORMAT_PRESETS)) {
      expect(parseFormat(format)).toEqual({ ok: true, value: format });
      expect(describeFormat(JSON.parse(JSON.stringify(format)))).toBe(label);
    }
    expect(describeFormat({ ...FORMAT_PRESETS.oneSet.format, gamesPerSet: 5 })).toContain("5 games");
  });

  it("[AP11] tells staff who charted, by lane, and of no match of others", async () => {
    const { api, director, ids } = await start();
    api.memory.logs.openFromPhone(ids.matchId, "lane-1", "Ioan P.");
    expect(await director.match.lanes({ matchId: ids.matchId })).toEqual([
      { laneId: "lane-1", chartist: "Ioan P." },
    ]);
    const elsewhere = "00000000-0000-4000-8000-000000000000";
    await expect(director.match.lanes({ matchId: elsewhere })).rejects.toThrow();
  });

  it("[AP10] every change of staff is noted with who did it, by ids alone", async () => {
    const { director, rows, ids } = await start();
    await director.code.endPhone({ sessionId: ids.sessionId });
    expect(rows.audit.map((line) => line.action)).toEqual([
      "day.create",
      "match.add",
      "code.issue",
      "code.endPhone",
    ]);
    expect(rows.audit.at(-1)?.subject).toBe(ids.sessionId);
    expect(JSON.stringify(rows.audit)).not.toContain("Dana");
  });
});
