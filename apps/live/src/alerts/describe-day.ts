import type { AlertLine, CoachingFacts } from "@courtloom/protocol";
import { coachingFactsOf } from "@courtloom/protocol";
import type { MatchCard, MatchRef } from "../store.ts";
import { alertLineOf } from "./alert-line-of.ts";
import type { MarkedAlert, MembersOf } from "./alert-store.ts";

/** An alert with its words on the wire, and what ranks it. */
export interface DescribedAlert {
  readonly alert: MarkedAlert;
  readonly line: AlertLine;
  readonly coaching: CoachingFacts;
  readonly state: MarkedAlert["state"];
  readonly strength: number;
  readonly raisedMs: number;
}

export type DescribeDay = (
  academyId: string,
  alerts: readonly MarkedAlert[],
) => Promise<readonly DescribedAlert[]>;

export interface DescribeDeps {
  readonly membersOf: MembersOf;
  readonly matchCard: (match: MatchRef) => Promise<MatchCard | undefined>;
  readonly chartistOf: (match: MatchRef, laneId: string) => Promise<string | undefined>;
}

/** A mark outlives the membership of who made it. */
const GONE = "a former member";

/** Puts names and courts to alerts, as the day's tables have them now; rejects when they cannot be asked. SPEC AL22. */
export const createDescribeDay =
  ({ membersOf, matchCard, chartistOf }: DescribeDeps): DescribeDay =>
  async (academyId, alerts) => {
    if (alerts.length === 0) return [];
    const names = new Map((await membersOf({ academyId })).map((one) => [one.memberId, one.displayName]));
    const nameOf = (memberId: string): string => names.get(memberId) ?? GONE;
    const described = await Promise.all(
      alerts.map(async (alert): Promise<readonly DescribedAlert[]> => {
        const match = { academyId, matchId: alert.matchId };
        const laneId = alert.withdrawn?.laneId;
        const [card, chartist] = await Promise.all([
          matchCard(match),
          laneId === undefined ? undefined : chartistOf(match, laneId),
        ]);
        if (!card) return [];
        const line = alertLineOf({ alert, card, nameOf, chartist });
        const { state, raisedMs, said } = alert;
        return [{ alert, line, coaching: coachingFactsOf(card), state, strength: said.strength, raisedMs }];
      }),
    );
    return described.flat();
  };
