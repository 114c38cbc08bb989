import type { ApiStore, CourtRow, MatchRow, MatchStage } from "@courtloom/api";
import { byPlayer, type Side } from "@courtloom/core";
import type { MatchHead } from "@courtloom/db";
import type { TileState } from "@courtloom/protocol";
import type { CourtsideMatch, Elsewhere } from "../pad/courtside.ts";

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

/** What is being played or waiting on a day's other courts than one, in order of the courts. */
const elsewhere = async (
  source: CourtsideSource,
  at: { readonly academyId: string; readonly dayId: string; readonly courtId: string },
  chartist: string,
): Promise<readonly Elsewhere[]> => {
  const { academyId, dayId, courtId } = at;
  const courts = (await source.dayBoard({ academyId, dayId }))?.courts ?? [];
  const rows = await source.dayMatches({ academyId, dayId });
  const found = courts
    .filter((court) => court.courtId !== courtId)
    .flatMap((court) => rows.filter((row) => row.courtId === court.courtId).map((row) => ({ court, row })));
  const told = await Promise.all(
    found.map(async ({ court, row }): Promise<readonly Elsewhere[]> => {
      const { matchId, names, state, charting } = await toCourtside(source, academyId, row, chartist);
      if (state === "empty" || state === "over") return [];
      const by = charting === undefined ? {} : { charting };
      return [{ matchId, courtName: court.name, names, state, ...by }];
    }),
  );
  return told.flat();
};

export interface CourtForStaff {
  readonly courtName: string;
  readonly matches: readonly CourtsideMatch[];
  readonly elsewhere: readonly Elsewhere[];
}

/** One match that staff name, with its court's name and the day's other courts; undefined when the academy has no such match. */
export const matchForStaff = async (
  source: CourtsideSource,
  academyId: string,
  matchId: string,
  chartist: string,
): Promise<CourtForStaff | undefined> => {
  const match = await source.matchCard({ academyId, matchId });
  if (!match) return undefined;
  const { dayId, courtId } = match;
  const at = dayId && courtId ? { academyId, dayId, courtId } : undefined;
  const there = at && (await courtOfDay(source, at, chartist));
  if (at && there) {
    const others = await elsewhere(source, at, chartist);
    return { courtName: there.court.name, matches: there.matches, elsewhere: others };
  }
  const alone = await toCourtside(source, academyId, match, chartist);
  return { courtName: "No court yet", matches: [alone], elsewhere: [] };
};
