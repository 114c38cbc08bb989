import type { ByPlayer, Side } from "@courtloom/core";
import type { ChartingLevel, CoachingMode, UsualRate } from "@courtloom/match-log";
import type { FinishedSet, MatchStatus } from "@courtloom/tennis";

/** x of n with its 95 % interval; `low` and `high` absent when n = 0. */
export interface TileRate {
  readonly x: number;
  readonly n: number;
  readonly low?: number;
  readonly high?: number;
}

/** Staff only. `notCharted` sides have none. */
export interface TileFigures {
  readonly lineMissed: TileRate;
  readonly lineShare: TileRate;
  readonly usualLineMissed?: UsualRate;
  /** x kept to plan of n judged own balls; absent where no plan could judge any. */
  readonly planKept?: TileRate;
}

/**
 * What is still to be played before ends are changed, from the score alone. `game`: this game. `gameAndOne`:
 * this game and one more. `later`: not after this game; what follows depends on who wins it. `points`: so many
 * points of this tie-break. `tieBreak`: this tie-break. `set`: this set.
 */
export type TileNextChange =
  | { readonly kind: "game" | "gameAndOne" | "later" | "tieBreak" | "set" }
  | { readonly kind: "points"; readonly points: number };

/** A pause that is longer than one between points, or in which ends are changed; it lasts until the next point. */
export interface TilePause {
  /** `noRest`: a change of ends without a sit-down. */
  readonly kind: "rest" | "noRest" | "set";
  /** Ends are changed in it. */
  readonly change: boolean;
  readonly allowedSeconds: number;
  /** When it began, by the server's clock; absent where that is not known. */
  readonly sinceMs?: number;
}

/** How close a court is to a change of ends. `next` is absent when none is to come. */
export interface TileEnds {
  readonly pause?: TilePause;
  readonly next?: TileNextChange;
}

/** Counts of the match so far: two of them tell what happened between. */
export interface TileProgress {
  /** Points in the score, those that were not seen included. */
  readonly points: number;
  /** Games won against the server, by who won them. */
  readonly breaks: ByPlayer<number>;
  readonly suspensions: number;
}

export const TILE_ALERT_STATES = ["noticed", "standing", "easing", "withdrawn"] as const;

/** An alert of a court's match, as its tile shows it; the panel has the words. */
export interface TileAlert {
  readonly side: Side;
  readonly state: (typeof TILE_ALERT_STATES)[number];
  /** "2–1", games from the player's side when it was raised; null where that is not known. */
  readonly since: string | null;
}

export interface TileScore {
  readonly sets: readonly FinishedSet[];
  readonly games: readonly [number, number];
  /** As called: "0", "15", "30", "40", "Ad", or the tie-break's number. */
  readonly points: ByPlayer<string>;
  readonly server: Side | null;
  readonly tieBreak: boolean;
  readonly matchTieBreak: boolean;
  readonly endsDue: boolean;
  readonly winner: Side | null;
  readonly status: MatchStatus;
}

/** When the court's phone was last heard, by the server's clock. */
export interface Heard {
  readonly matchId: string;
  readonly heardMs: number | null;
  /** Entries the phone said it had not sent, when last heard. */
  readonly unsent: number | null;
}

export const TILE_STATES = ["empty", "waiting", "playing", "suspended", "over"] as const;
/** `waiting`: a match is due and no point is charted; `empty`: no match on this court. */
export type TileState = (typeof TILE_STATES)[number];

/** One court of a day as a board shows it. `pos` orders updates: an older one is dropped. */
export interface Tile {
  readonly courtId: string;
  readonly courtNo: number;
  readonly courtName: string;
  readonly state: TileState;
  readonly matchId: string | null;
  readonly pos: number;
  readonly names: ByPlayer<string> | null;
  readonly own: ByPlayer<boolean> | null;
  readonly score: TileScore | null;
  /** "after court 6", or the next match's names, as the order of play has it. */
  readonly next: string | null;
  readonly heard: Heard | null;
  /** Staff view only, absent on a wall. */
  readonly staff?: {
    readonly chartist: string | null;
    /** Names of those who chart, or charted, beside the lead; absent when nobody does. */
    readonly seconds?: readonly string[];
    readonly level: ChartingLevel;
    readonly coachingMode: CoachingMode;
    readonly bothOwn: boolean;
    readonly setAsideCount: number;
    readonly figures: ByPlayer<TileFigures | null>;
    readonly playerIds: ByPlayer<string>;
    readonly ends?: TileEnds;
    readonly progress: TileProgress;
    /** The gravest first; absent when there is none. */
    readonly alerts?: readonly TileAlert[];
  };
}
