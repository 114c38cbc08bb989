import type { MatchFormat } from "@courtloom/tennis";

/** What the form for a format of one's own asks. */
export interface OwnRules {
  readonly sets: number;
  readonly gamesPerSet: number;
  readonly tiebreak: boolean;
  readonly tiebreakTo: number;
  readonly noAd: boolean;
  readonly finalSet: "same" | "matchTiebreak";
}

const MATCH_TIEBREAK_TO = 10;

/** The format that these answers make; the server checks it as any other. */
export const formatFrom = ({
  sets,
  gamesPerSet,
  tiebreak,
  tiebreakTo,
  noAd,
  finalSet,
}: OwnRules): MatchFormat => ({
  sets,
  gamesPerSet,
  tiebreakAt: tiebreak ? gamesPerSet : null,
  tiebreakTo,
  noAd,
  finalSet: finalSet === "same" ? { kind: "same" } : { kind: "matchTiebreak", to: MATCH_TIEBREAK_TO },
});
