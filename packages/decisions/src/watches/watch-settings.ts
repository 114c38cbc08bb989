import type { ByPlayer } from "@courtloom/core";
import { err, ok, type Result } from "@courtloom/core";
import { RATES, type Rate } from "@courtloom/match-log";

/** Which rates of a player are watched, and how often that may be wrong. */
export interface WatchSettings {
  /** One to four, each once, in the order of `RATES`. */
  readonly rates: readonly Rate[];
  /** Probability that a match of a player who plays as usual raises any alert, in (0, 0.2]; all rates together. */
  readonly alpha: number;
  /** Fewer false alarms for players of whom little is known, and fewer alerts found. */
  readonly quiet: boolean;
}

/** More alerts than these drown the ones that matter. */
export const MOST_WATCHED = 4;
/** One match in five: beyond it an alert says too little. */
export const HIGHEST_ALPHA = 0.2;

/** What holds until staff choose otherwise. SPEC WA8. */
export const DEFAULT_WATCH_SETTINGS: WatchSettings = { rates: ["lineMissed"], alpha: 0.05, quiet: false };

/** Closed list of what can be wrong with settings. */
export const WATCH_SETTING_PROBLEMS = [
  "none_watched",
  "too_many_watched",
  "watched_twice",
  "alpha_out_of_range",
] as const;
export type WatchSettingProblem = (typeof WATCH_SETTING_PROBLEMS)[number];

const problemOf = ({ rates, alpha }: WatchSettings): WatchSettingProblem | undefined => {
  if (rates.length === 0) return "none_watched";
  if (rates.length > MOST_WATCHED) return "too_many_watched";
  if (new Set(rates).size < rates.length) return "watched_twice";
  if (!(alpha > 0 && alpha <= HIGHEST_ALPHA)) return "alpha_out_of_range";
  return undefined;
};

/** The settings with their rates in order, or what is wrong with them. SPEC WA9. */
export const checkWatchSettings = (settings: WatchSettings): Result<WatchSettings, WatchSettingProblem> => {
  const problem = problemOf(settings);
  if (problem !== undefined) return err(problem);
  return ok({ ...settings, rates: RATES.filter((rate) => settings.rates.includes(rate)) });
};

/** What is wrong, and what to do. */
export const watchSettingProblemText = (problem: WatchSettingProblem): string =>
  ({
    none_watched: "Nothing is watched. Choose 1 to 4 rates.",
    too_many_watched: "Too many rates. Choose 1 to 4; more alerts drown the ones that matter.",
    watched_twice: "A rate is there twice. Leave one of them out.",
    alpha_out_of_range: "Choose a share above 0 and at most 1 match in 5.",
  })[problem];

/** Settings of a match's two players; null for a side that is not watched. */
export type WatchedPlayers = ByPlayer<WatchSettings | null>;

/** What holds for a player: the player's own settings, else the academy's, else the default. SPEC WA10. */
export const settingsForPlayer = (
  academys: WatchSettings | null | undefined,
  own: WatchSettings | null | undefined,
): WatchSettings => own ?? academys ?? DEFAULT_WATCH_SETTINGS;
