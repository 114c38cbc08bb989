import type { AlertKey, AlertLine } from "@courtloom/protocol";
import { coachingFactsOf } from "@courtloom/protocol";
import { wilson } from "@courtloom/stats";
import type { MatchCard } from "../store.ts";
import { alertMarksOf, type NameOf } from "./alert-marks.ts";
import type { MarkedAlert } from "./alert-store.ts";

export const alertKeyOf = ({ matchId, playerId, rate, version, episode }: AlertKey): AlertKey => ({
  matchId,
  playerId,
  rate,
  version,
  episode,
});

export const alertKeyText = ({ matchId, playerId, rate, version, episode }: AlertKey): string =>
  JSON.stringify([matchId, playerId, rate, version, episode]);

export interface LineFacts {
  readonly alert: MarkedAlert;
  readonly card: MatchCard;
  readonly nameOf: NameOf;
  /** Who charts in the lane whose correction took the evidence; undefined where that is not known. */
  readonly chartist: string | undefined;
}

/** One alert as staff see it. SPEC AL22. */
export const alertLineOf = ({ alert, card, nameOf, chartist }: LineFacts): AlertLine => {
  const { side, state, said, raisedMs, withdrawn } = alert;
  const { x, n, offPlan } = said.match;
  const { low, high } = wilson(x, n) ?? { low: 0, high: 1 };
  return {
    key: alertKeyOf(alert),
    courtId: card.courtId,
    courtNo: card.courtNo,
    side,
    name: card.players[side].displayName,
    state,
    match: { x, n, offPlan, low, high },
    ...(said.since ? { since: said.since } : {}),
    usual: said.usual,
    source: said.source,
    strength: said.strength,
    raisedMs,
    bothOwn: coachingFactsOf(card).bothOwn,
    ...(withdrawn
      ? {
          withdrawn: {
            atMs: withdrawn.atMs,
            ...(chartist === undefined ? {} : { chartist }),
            ...(withdrawn.entryId === undefined ? {} : { entryId: withdrawn.entryId }),
          },
        }
      : {}),
    marks: alertMarksOf(alert, nameOf),
  };
};
