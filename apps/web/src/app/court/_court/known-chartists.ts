import { DESK_LANE, type LoggedEntry } from "@courtloom/match-log";

export type Chartists = Readonly<Record<string, string>>;

/** The lane that leads as far as the log tells: the one of the highest epoch; undefined before anything is charted. */
export const leadLaneOf = (entries: readonly LoggedEntry[]): string | undefined => {
  let lead: LoggedEntry | undefined;
  for (const entry of entries) {
    if (entry.laneId === DESK_LANE) continue;
    if (lead === undefined || entry.epoch > lead.epoch) lead = entry;
  }
  return lead?.laneId;
};

/** Chartists by lane: those that are known, and for the leading lane the one that the board names. */
export const knownChartists = (
  known: Chartists,
  entries: readonly LoggedEntry[],
  leadChartist: string | null,
): Chartists => {
  const lead = leadLaneOf(entries);
  if (lead === undefined || leadChartist === null || known[lead] !== undefined) return known;
  return { ...known, [lead]: leadChartist };
};
