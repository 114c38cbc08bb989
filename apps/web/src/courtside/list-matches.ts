import type { ApiStore, CourtRow, MatchRow, MatchStage } from "@courtloom/api";
import { byPlayer, type Side } from "@courtloom/core";
import type { MatchHead } from "@courtloom/db";
import type { TileState } from "@courtloom/protocol";
import type { CourtsideMatch } from "../pad/courtside.ts";

/** What the list is made from; satisfied by the stores. */
export interface CourtsideSource {
  readonly dayBoard: ApiStore["dayBoard"];
  readonly dayMatches: ApiStore["dayMatches"];
  readonly matchCard: ApiStore["matchCard"];
  /** Where a match's log stands; undefined when that cannot be told. */
  readonly head: (ref: {
    readonly academyId: string;
    readonly matchId: string;
  }) => Promise<Pick<MatchHead, "chartist"> | undefined>;
}

const STATES = {
  waiting: "waiting",
  open: "playing",
  over: "over",
  sealed: "over",
} as const satisfies Record<MatchStage, TileState>;

const nameOf = (match: MatchRow, side: Side): string => {
  const partner = match.partners[side];
  const first = match.players[side].displayName;
  return partner === null ? first : `${first} / ${partner.displayName}`;
};

/** A match as the pad is told of it; `chartist` is who asks. Pure but for the look at its log's head. */
const toCourtside = async (
  source: CourtsideSource,
  academyId: string,
  match: MatchRow,
  chartist: string,
): Promise<CourtsideMatch> => {
  const { matchId, subjects, stage } = match;
  const head = stage === "open" ? await source.head({ academyId, matchId }) : undefined;
  const other = head?.chartist && head.chartist !== chartist ? head.chartist : undefined;
  return {
    matchId,
    names: byPlayer((side) => nameOf(match, side)),
    own: byPlayer((side) => match.players[side].own),
    subjects,
    state: STATES[stage],
    ...(other === undefined ? {} : { charting: other }),
  };
};

export interface CourtOfDay {
  readonly court: CourtRow;
  readonly matches: readonly CourtsideMatch[];
}

/** A court of a day with its matches in order of play; undefined when there is no such court. */
export const courtOfDay = async (
  source: CourtsideSource,
  at: { readonly academyId: string; readonly dayId: string; readonly courtId: string },
  chartist: string,
): Promise<CourtOfDay | undefined> => {
  const { academyId, dayId, courtId } = at;
  const board = await source.dayBoard({ academyId, dayId });
  const court = board?.courts.find((each) => each.courtId === courtId);
  if (!court) return undefined;
  const matches = (await source.dayMatches({ academyId, dayId })).filter((each) => each.courtId === courtId);
  return {
    court,
    matches: await Promise.all(matches.map((match) => toCourtside(source, academyId, match, chartist))),
  };
};

/** One match that staff name, with its court's name; undefined when the academy has no such match. */
export const matchForStaff = async (
  source: CourtsideSource,
  academyId: string,
  matchId: string,
  chartist: string,
): Promise<{ readonly courtName: string; readonly matches: readonly CourtsideMatch[] } | undefined> => {
  const match = await source.matchCard({ academyId, matchId });
  if (!match) return undefined;
  const { dayId, courtId } = match;
  const there =
    dayId && courtId ? await courtOfDay(source, { academyId, dayId, courtId }, chartist) : undefined;
  if (there) return { courtName: there.court.name, matches: there.matches };
  return { courtName: "No court yet", matches: [await toCourtside(source, academyId, match, chartist)] };
};
