import { describe, expect, it } from "vitest";
import { parseSettings, USUAL_SETTINGS } from "../pad-settings.ts";
import { parseCourts } from "./kept-courts.ts";

describe("two courts on one phone", () => {
  it("[PD76] come back as they were kept, with the one in front and each one's seat", () => {
    const kept = { matchIds: ["m1", "m2"], front: "m2", seats: { m1: "behind", m2: "side" } };
    expect(parseCourts(JSON.stringify(kept))).toEqual(kept);
  });

  it("[PD76] are forgotten rather than guessed when what is stored is something else", () => {
    const wrong = [
      "",
      "null",
      "7",
      "{}",
      '{"matchIds":["m1"]}',
      '{"matchIds":["m1","m1"]}',
      '{"matchIds":["a","b","c"]}',
    ];
    for (const stored of [null, ...wrong]) expect(parseCourts(stored), String(stored)).toBeUndefined();
    const odd = { matchIds: ["m1", "m2"], front: "m3", seats: { m1: "roof" } };
    expect(parseCourts(JSON.stringify(odd))).toEqual({ matchIds: ["m1", "m2"], front: "m1", seats: {} });
  });
});

describe("what a phone remembers of its person", () => {
  it("[PD68, PD70, PD71] holds in the right hand, ticks in it and is silent until somebody says otherwise", () => {
    expect(USUAL_SETTINGS).toMatchObject({ hand: "right", haptics: true, sound: false, keys: true });
    const said = { hand: "left", haptics: false, sound: true, keys: false };
    expect(parseSettings(JSON.stringify(said))).toMatchObject(said);
    const odd = { hand: "both", haptics: "yes", sound: 1, keys: null };
    expect(parseSettings(JSON.stringify(odd))).toEqual(USUAL_SETTINGS);
  });
});
