import type { Result } from "@courtloom/core";
import type { Rate } from "@courtloom/match-log";

/** What is watched of a player. */
export interface WatchChoice {
  /** One to four, each once. */
  readonly rates: readonly Rate[];
  /** Probability of any false alarm in a match of a player who plays as usual, in (0, 0.2]. */
  readonly alpha: number;
  readonly quiet: boolean;
}

export interface WatchSettingVersion {
  /** Null: the academy's settings. */
  readonly playerId: string | null;
  /** Counts 1, 2, 3 … for the academy and for each player. */
  readonly version: number;
  /** Null, of a player: no own settings any more, the academy's hold. */
  readonly choice: WatchChoice | null;
  readonly savedBy: string;
  /** Null when they are no longer a member. */
  readonly savedByName: string | null;
  readonly savedMs: number;
}

export type NewWatchSetting = {
  readonly academyId: string;
  /** The version that was changed; 0: there is none yet. */
  readonly expected: number;
  /** Id of the member. */
  readonly savedBy: string;
} & (
  | { readonly playerId: null; readonly choice: WatchChoice }
  | { readonly playerId: string; readonly choice: WatchChoice | null }
);

/** Alerts of a rate that staff called useful or not: x useful of n. */
export interface JudgedAlerts {
  readonly rate: Rate;
  readonly x: number;
  readonly n: number;
}

/** What is watched, with all versions, which are only ever added. Rules WA17 to WA19. */
export interface WatchStore {
  /** The newest version of the academy's settings, first, and of its players'; with `playerIds` of theirs alone. */
  readonly watchSettings: (args: {
    readonly academyId: string;
    readonly playerIds?: readonly string[];
  }) => Promise<readonly WatchSettingVersion[]>;
  /** Adds the version after `expected`. The same one sent again by the same member is the one that was saved. */
  readonly saveWatchSetting: (
    setting: NewWatchSetting,
  ) => Promise<
    Result<
      WatchSettingVersion,
      { readonly code: "stale_watch"; readonly version: number } | { readonly code: "unknown_player" }
    >
  >;
  /** By rate, for the rates of which any alert was called useful or not; an alert counts once. */
  readonly judgedAlerts: (args: { readonly academyId: string }) => Promise<readonly JudgedAlerts[]>;
}
