import type { Side } from "@courtloom/core";

/** What happens to an unfinished game when the time is up. */
export type UnfinishedGame = "ignored" | "leaderGetsIt" | "needsLeadOfTwo" | "decidingPoint";

export interface TimePolicy {
  readonly unfinishedGame: UnfinishedGame;
  /** When sets, games and points are level: a draw (no winner). Default true; false leaves the match to go on for a deciding point. */
  readonly drawAllowed?: boolean;
  /** Which games are compared when sets are level: those of the unfinished set (default) or of the whole match. */
  readonly gamesCounted?: "set" | "match";
  /** Whether the points of a game that did not count decide when sets and games are level. Default false. */
  readonly pointsDecide?: boolean;
}

/** What can happen to a score. Plain data; SPEC rules SC1 to SC40. */
export type ScoreEvent =
  | { readonly type: "point"; readonly winner: Side }
  | { readonly type: "pointPenalty"; readonly against: Side }
  | { readonly type: "gamePenalty"; readonly against: Side }
  /** A person states the score; members left out stay as they are. `sets` are finished sets as [A, B] or [A, B, loser's tie-break points]. */
  | {
      readonly type: "setScore";
      readonly sets?: readonly (readonly [number, number] | readonly [number, number, number | "MTB"])[];
      readonly games?: readonly [number, number];
      readonly points?: readonly [number, number];
      readonly server?: Side;
    }
  | { readonly type: "setServer"; readonly to: Side }
  /** Doubles, before the first point of a set: the pairs name a new order of service, four names, the next server first. */
  | { readonly type: "setOrder"; readonly order: readonly string[] }
  /** Takes back the last n events that are not themselves `undo`. */
  | { readonly type: "undo"; readonly n: number }
  | { readonly type: "retire"; readonly side: Side }
  | { readonly type: "default"; readonly side: Side }
  | { readonly type: "walkover"; readonly absent: Side }
  | { readonly type: "unplayed" }
  | { readonly type: "timeUp"; readonly policy: TimePolicy };
