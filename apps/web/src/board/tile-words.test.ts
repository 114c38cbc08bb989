import type { Tile, TileAlert } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import {
  alertFlagOf,
  alertState,
  blindSentence,
  chartistWords,
  flagOf,
  secondsWords,
  unsentWords,
} from "./tile-words.ts";
import { wallTime } from "./wall-time.ts";

const court = { state: "playing", next: null, names: null, score: null } as const;
const heard = { kind: "heard", seconds: 2 } as const;

describe("words of a tile", () => {
  it("[BD4] flags a state by shape and word, and a court in play not at all", () => {
    expect(flagOf(court, heard)).toBeNull();
    expect(flagOf({ ...court, state: "waiting", next: "Jun D. – Signe F." }, { kind: "none" })).toEqual({
      mark: "waiting",
      word: "Waiting",
      detail: "then Jun D. – Signe F.",
    });
    expect(flagOf({ ...court, state: "suspended" }, { kind: "none" })).toMatchObject({ mark: "suspended" });
    expect(flagOf(court, { kind: "blind", seconds: 94 })).toMatchObject({
      word: "Blind",
      detail: "phone silent 94 s",
    });
    expect(flagOf(court, { kind: "blind", seconds: null })).toMatchObject({ detail: "phone not heard" });
  });

  it("[BD3] says when the score of a blind court was heard and whom to ask", () => {
    expect(blindSentence("11:46", "Ioan P.")).toBe("Score as heard at 11:46. Ask Ioan P. on court.");
    expect(blindSentence(null, null)).toBe("Score as last known.");
  });

  it("[BD5] says what was unsent only when something was", () => {
    expect(unsentWords({ matchId: "m", heardMs: 1, unsent: 3 })).toBe("3 unsent when last heard");
    expect(unsentWords({ matchId: "m", heardMs: 1, unsent: 0 })).toBeNull();
    expect(unsentWords(null)).toBeNull();
  });

  it("[BD15] names who charts beside the lead, and says that they are second", () => {
    expect(secondsWords(undefined)).toBeNull();
    expect(secondsWords([])).toBeNull();
    expect(secondsWords(["Maren H.", "Rosa T."])).toBe("also Maren H., Rosa T. (second)");
  });

  it("[BD5] names the chartist and the level", () => {
    expect(chartistWords("Ioan P.", "key")).toBe("Ioan P., key balls");
    expect(chartistWords(null, "score")).toBe("Nobody charts yet");
  });

  it("[BD9] tells the time in the academy's zone, and says UTC where the zone is not known", () => {
    const ms = Date.UTC(2026, 5, 20, 10, 46, 24);
    expect(wallTime(ms, "Europe/London")).toBe("11:46");
    expect(wallTime(ms, "Europe/London", true)).toBe("11:46:24");
    expect(wallTime(ms, "Nowhere/Here")).toBe("10:46 UTC");
  });

  it("[BD42, AS21] flags the gravest alert by shape and word while it is played, and never after", () => {
    const withAlerts = (state: Tile["state"], ...alerts: readonly TileAlert[]) =>
      ({ state, staff: { alerts } }) as unknown as Tile;
    const standing: TileAlert = { side: "A", state: "standing", since: "2–1" };
    const easing: TileAlert = { side: "B", state: "easing", since: null };
    expect(alertFlagOf(withAlerts("playing", standing, easing))).toEqual({
      mark: "alert",
      word: "Alert",
      detail: "since 2–1",
    });
    expect(alertFlagOf(withAlerts("suspended", easing))).toEqual({
      mark: "easing",
      word: "Easing",
      detail: null,
    });
    expect(alertFlagOf(withAlerts("playing", { ...easing, since: "5–4" }))?.detail).toBe("raised at 5–4");
    expect(alertState(withAlerts("over", standing))).toBeUndefined();
    expect(alertFlagOf(withAlerts("playing"))).toBeNull();
    const detail = (standing: Parameters<typeof alertFlagOf>[1], alert = easing) =>
      alertFlagOf(withAlerts("playing", alert), standing)?.detail;
    expect(detail({ rate: "lineMissed", snoozed: false }, standing)).toBe("since 2–1");
    expect(detail({ rate: "keptMissed", snoozed: false }, standing)).toBe("kept balls missed, since 2–1");
    expect(detail({ rate: "lineMissed", snoozed: true }, standing)).toBe("snoozed");
    expect(detail({ rate: "lineMissed", snoozed: true })).toBeNull();
  });
});
