import { parseFormat } from "@courtloom/tennis";
import { describe, expect, it } from "vitest";
import { readMatchForm } from "./read-match-form.ts";

const PLAYERS = [
  { playerId: "p1", displayName: "Noor V.", own: true },
  { playerId: "p2", displayName: "Jun D.", own: true },
  { playerId: "p3", displayName: "Jun D.", own: false },
];
const PLACE = { dayId: "d", courtId: "c" };

const form = (fields: Readonly<Record<string, string>>): FormData => {
  const data = new FormData();
  for (const [name, value] of Object.entries(fields)) data.set(name, value);
  return data;
};

describe("the form for a match", () => {
  it("[WB7] sends a name on the list by its id, however it is spaced, and a new one as it is", () => {
    const asked = readMatchForm(
      form({ "A1-name": " noor  v. ", "B1-name": "Visitor red", "B1-hand": "left", format: "oneSet" }),
      PLACE,
      PLAYERS,
    );
    expect(asked).toEqual({
      ...PLACE,
      sides: { A: [{ playerId: "p1" }], B: [{ name: "Visitor red", hand: "left", own: false }] },
      format: "oneSet",
      coachingMode: "notKnown",
    });
  });

  it("[WB7] takes a name that two people share for a new one rather than guess", () => {
    const asked = readMatchForm(
      form({ "A1-name": "Jun D.", "A1-own": "on", format: "oneSet" }),
      PLACE,
      PLAYERS,
    );
    expect(asked.sides.A).toEqual([{ name: "Jun D.", hand: "unknown", own: true }]);
  });

  it("[WB7] names pairs in doubles, the first server when chosen, and the mode as set", () => {
    const asked = readMatchForm(
      form({
        doubles: "on",
        "A1-name": "a",
        "A2-name": "b",
        firstServer: "B",
        coachingMode: "practice",
        surface: "clay",
        format: "x",
      }),
      PLACE,
      [],
    );
    expect(asked.sides.A).toHaveLength(2);
    expect(asked).toMatchObject({ firstServer: "B", coachingMode: "practice", surface: "clay" });
    expect(readMatchForm(form({ format: "x", surface: "" }), PLACE, [])).not.toHaveProperty("surface");
  });

  it("[WB7] turns own rules into a format that the scoring accepts", () => {
    const base = { format: "own", sets: "3", gamesPerSet: "5", tiebreakTo: "7" };
    const asked = (more: Readonly<Record<string, string>>) =>
      parseFormat(readMatchForm(form({ ...base, ...more }), PLACE, []).format);
    expect(asked({ tiebreak: "on", noAd: "on", finalSet: "matchTiebreak" })).toMatchObject({
      ok: true,
      value: { tiebreakAt: 5, noAd: true, finalSet: { kind: "matchTiebreak", to: 10 } },
    });
    expect(asked({ finalSet: "same" })).toMatchObject({ ok: true, value: { tiebreakAt: null, noAd: false } });
    expect(asked({ gamesPerSet: "" }).ok).toBe(false);
  });
});
