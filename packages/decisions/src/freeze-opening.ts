import { type ByPlayer, byPlayer, type Side } from "@courtloom/core";
import type { CoachingMode, MatchOpened, OpenedPlayer, Rate, UsualRate } from "@courtloom/match-log";
import { betaPosterior, central90, matchPredictive, type PastMatch } from "@courtloom/stats";
import type { MatchFormat } from "@courtloom/tennis";
import { STARTER_ASKS } from "./starter-asks.ts";
import type { Tally } from "./tally.ts";

/** Past tallies: each player's own, and all of the academy's. */
export interface PastTallies {
  readonly own: ByPlayer<readonly Tally[]>;
  readonly academy: readonly Tally[];
}

export interface OpeningInput {
  readonly matchId: string;
  readonly format: MatchFormat;
  readonly firstServer: Side;
  readonly players: ByPlayer<OpenedPlayer>;
  readonly doubles: boolean;
  readonly doublesOrder?: readonly [string, string, string, string];
  readonly coachingMode: CoachingMode;
  readonly past: PastTallies;
}

/** An academy's rate says nothing until so many attempts were charted. */
const ACADEMY_ATTEMPTS = 100;
/** Own past must weigh at least as much as twice the prior before a rate is called the player's own. */
const OWN_WEIGHT = 40;

const pastOf = (tallies: readonly Tally[], rate: Rate): PastMatch[] => tallies.map((tally) => tally[rate]);

const academyMean = (past: readonly PastMatch[]): number | undefined => {
  const n = past.reduce((sum, match) => sum + match.n, 0);
  if (n < ACADEMY_ATTEMPTS) return undefined;
  // Half an event on each side keeps the mean off 0 and 1, where the prior would be no distribution.
  return (past.reduce((sum, match) => sum + match.x, 0) + 0.5) / (n + 1);
};

/**
 * The usual rate of a player for one rate, or `undefined` when the academy has charted too little to say:
 * mean and central 90 % range of the rate of one coming match. SPEC D8.
 */
export const usualRate = (
  rate: Rate,
  own: readonly Tally[],
  academy: readonly Tally[],
): UsualRate | undefined => {
  const mean = academyMean(pastOf(academy, rate));
  if (mean === undefined) return undefined;
  const posterior = betaPosterior(mean, pastOf(own, rate));
  const predictive = matchPredictive(posterior);
  const ownWeight = posterior.a + posterior.b - betaPosterior(mean, []).a - betaPosterior(mean, []).b;
  return {
    mean: posterior.a / (posterior.a + posterior.b),
    ...central90(predictive),
    a: posterior.a,
    b: posterior.b,
    source: ownWeight >= OWN_WEIGHT ? "own" : "academy",
  };
};

const usualRates = (past: PastTallies, side: Side): Partial<Record<Rate, UsualRate>> => {
  const lineMissed = usualRate("lineMissed", past.own[side], past.academy);
  const lineShare = usualRate("lineShare", past.own[side], past.academy);
  return { ...(lineMissed ? { lineMissed } : {}), ...(lineShare ? { lineShare } : {}) };
};

/** Both own players are charted when both play; doubles are charted for the score only. */
const subjectsOf = (input: OpeningInput): Side[] => {
  if (input.doubles) return [];
  return (["A", "B"] as const).filter((side) => input.players[side].own);
};

/** The first entry's body: everything that the fold needs, as it stands when the match opens. SPEC L2. */
export const freezeOpening = (input: OpeningInput): MatchOpened => ({
  kind: "MatchOpened",
  matchId: input.matchId,
  format: input.format,
  firstServer: input.firstServer,
  players: input.players,
  subjects: subjectsOf(input),
  doubles: input.doubles,
  ...(input.doublesOrder ? { doublesOrder: input.doublesOrder } : {}),
  coachingMode: input.coachingMode,
  usualRates: byPlayer((side) => (input.players[side].own ? usualRates(input.past, side) : {})),
  planVersion: null,
  fitVersion: null,
  watches: [],
  asks: STARTER_ASKS,
});
