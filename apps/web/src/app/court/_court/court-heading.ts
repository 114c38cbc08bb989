import type { DeskDay, DeskMatch } from "@courtloom/api";
import type { ByPlayer } from "@courtloom/core";
import type { CoachingFacts } from "../../../board/coaching-caption.ts";

/** What a court's page needs beside the log, which holds no names. */
export interface CourtHeading {
  readonly matchId: string;
  readonly dayId: string | null;
  readonly dayName: string | null;
  readonly courtNo: number | null;
  readonly names: ByPlayer<string>;
  readonly timeZone: string;
  /** As it stood when the page was opened; the board tells how it stands now. */
  readonly coaching: CoachingFacts;
  /** Chartists by lane, as far as they are known. */
  readonly chartists: Readonly<Record<string, string>>;
}

/** Puts together what the desk knows of a match and its day. A match outside a day is told in UTC. */
export const courtHeading = (
  match: DeskMatch,
  day: DeskDay | undefined,
  lanes: readonly { readonly laneId: string; readonly chartist: string }[],
): CourtHeading => ({
  matchId: match.matchId,
  dayId: day?.day.dayId ?? null,
  dayName: day?.day.name ?? null,
  courtNo: day?.courts.find((court) => court.courtId === match.courtId)?.no ?? null,
  names: match.names,
  timeZone: day?.timeZone ?? "UTC",
  coaching: { coachingMode: match.coachingMode, bothOwn: match.bothOwn },
  chartists: Object.fromEntries(lanes.map(({ laneId, chartist }) => [laneId, chartist])),
});
