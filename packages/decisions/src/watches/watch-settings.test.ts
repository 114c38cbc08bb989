import { RATES } from "@courtloom/match-log";
import { describe, expect, it } from "vitest";
import {
  checkWatchSettings,
  DEFAULT_WATCH_SETTINGS,
  settingsForPlayer,
  WATCH_SETTING_PROBLEMS,
  type WatchSettings,
  watchSettingProblemText,
} from "./watch-settings.ts";

const settings = (over: Partial<WatchSettings>): WatchSettings => ({ ...DEFAULT_WATCH_SETTINGS, ...over });

describe("watch settings", () => {
  it("[WA8] watch line balls missed at one match in twenty, not quietly, until somebody chooses", () => {
    expect(DEFAULT_WATCH_SETTINGS).toEqual({ rates: ["lineMissed"], alpha: 0.05, quiet: false });
    expect(checkWatchSettings(DEFAULT_WATCH_SETTINGS)).toEqual({ ok: true, value: DEFAULT_WATCH_SETTINGS });
  });

  it("[WA9] put their rates in order", () => {
    const checked = checkWatchSettings(settings({ rates: ["passedUp", "lineShare", "lineMissed"] }));
    expect(checked.ok && checked.value.rates).toEqual(["lineMissed", "lineShare", "passedUp"]);
  });

  it.each([
    ["none_watched", { rates: [] }],
    ["too_many_watched", { rates: [...RATES] }],
    ["watched_twice", { rates: ["lineMissed", "lineMissed"] }],
    ["alpha_out_of_range", { alpha: 0 }],
    ["alpha_out_of_range", { alpha: 0.21 }],
    ["alpha_out_of_range", { alpha: Number.NaN }],
  ] as const)("[WA9] tell %s, and what to do", (problem, over) => {
    expect(checkWatchSettings(settings(over))).toEqual({ ok: false, error: problem });
    expect(watchSettingProblemText(problem)).toMatch(/Choose|Leave/);
  });

  it("[WA9] have a sentence for each problem", () => {
    const texts = WATCH_SETTING_PROBLEMS.map(watchSettingProblemText);
    expect(new Set(texts).size).toBe(WATCH_SETTING_PROBLEMS.length);
  });

  it("[WA10] of a player hold before the academy's, and those before the default", () => {
    const [academys, own] = [settings({ quiet: true }), settings({ alpha: 0.1 })];
    expect(settingsForPlayer(academys, own)).toBe(own);
    expect(settingsForPlayer(academys, null)).toBe(academys);
    expect(settingsForPlayer(undefined, undefined)).toBe(DEFAULT_WATCH_SETTINGS);
  });
});
