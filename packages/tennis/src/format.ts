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

/** When ends change within a tie-break: every six points; after 1, 5, 9 …; every four; or once after four. */
export type TiebreakEnds = "six" | "coman" | "everyFour" | "firstFour";

/** Who serves in a tie-break: one point then two each; or two each throughout, the last by the side that served the pair before. */
export type TiebreakServe = "oneThenTwo" | "pairs";

/**
 * The rules of one match, as plain data: frozen in the log when the match opens.
 * Optional members have the default named beside them. SPEC rules F1 to F12.
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
  /** `true`: one deciding point at deuce. A number: after so many deuces. */
  readonly noAd: boolean | number;
  readonly finalSet: FinalSet;
  /** Default `six`. */
  readonly tbEnds?: TiebreakEnds;
  /** Default `oneThenTwo`. */
  readonly tbServe?: TiebreakServe;
  /** Every set is a single tie-break to so many points. */
  readonly tieBreakOnly?: { readonly to: number; readonly winBy?: 1 | 2 };
  /** Lead that wins a set; default 2. */
  readonly gameLead?: 1 | 2;
  /** When ends change between games: after odd games (default), or at set ends only. */
  readonly ends?: "oddGames" | "setEnds";
  /** A serve that clips the net and lands in is live; no effect on the score. Default false. */
  readonly noLet?: boolean;
}
