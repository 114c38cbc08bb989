/** How the deciding set is played. `same` plays it like the others. */
export type FinalSet =
  | { readonly kind: "same" }
  | { readonly kind: "advantage" }
  | {
      readonly kind: "tiebreak";
      readonly tiebreakAt: number;
      readonly tiebreakTo: number;
      readonly winBy?: 1 | 2;
    }
  | { readonly kind: "matchTiebreak"; readonly to: number; readonly winBy?: 1 | 2 };

export const TIEBREAK_ENDS = ["six", "coman", "everyFour", "firstFour", "none"] as const;

/** When ends change within a tie-break: every six points; after 1, 5, 9 …; every four; once after four; never. */
export type TiebreakEnds = (typeof TIEBREAK_ENDS)[number];

export const TIEBREAK_SERVES = ["oneThenTwo", "pairs"] as const;

/** Who serves in a tie-break: one point then two each; or two each throughout, the last by the side that served the pair before. */
export type TiebreakServe = (typeof TIEBREAK_SERVES)[number];

/**
 * The rules of one match, as plain data: frozen in the log when the match opens.
 * Optional members have the default named beside them. SPEC rules F1 to F16.
 */
export interface MatchFormat {
  /** Best of; odd, 1 to 5. */
  readonly sets: number;
  /** Games that win a set, with a lead of two unless `gameLead` says otherwise. */
  readonly gamesPerSet: number;
  /** Tie-break at n-n; `null` plays the set out with a lead of two. */
  readonly tiebreakAt: number | null;
  readonly tiebreakTo: number;
  /** Default 2. */
  readonly tiebreakWinBy?: 1 | 2;
  /** `true`: one deciding point at the first deuce. A number n: at the n-th deuce, so 1 is the same as `true`. */
  readonly noAd: boolean | number;
  readonly finalSet: FinalSet;
  /** Default `six`; with `ends: "setEnds"` default `none`. */
  readonly tbEnds?: TiebreakEnds;
  /** Default `oneThenTwo`. */
  readonly tbServe?: TiebreakServe;
  /** The same two settings for a match tie-break only; default as the tie-breaks of the match. */
  readonly matchTiebreakEnds?: TiebreakEnds;
  readonly matchTiebreakServe?: TiebreakServe;
  /** Every set is a single tie-break to so many points; a match tie-break as final set keeps its own length. */
  readonly tieBreakOnly?: { readonly to: number; readonly winBy?: 1 | 2 };
  /** Lead that wins a set; default 2. */
  readonly gameLead?: 1 | 2;
  /** All of so many games are played in each set and the most games win it; an even number needs `tiebreakAt` at half. */
  readonly fixedGames?: number;
  /** When ends change between games: after odd games (default), or at every set end and never between. */
  readonly ends?: "oddGames" | "setEnds";
  /** A serve that clips the net and lands in is live; no effect on the score. Default false. */
  readonly noLet?: boolean;
}
