import { DESK_LANE, type LoggedEntry } from "@courtloom/match-log";

export type Chartists = Readonly<Record<string, string>>;

interface LaneSeen {
  readonly laneId: string;
  readonly epoch: number;
}

/** The lane that an entry tells of: its own, or the one that it gives the lead to. */
const laneSeen = ({ laneId, epoch, entry: { body } }: LoggedEntry): LaneSeen | undefined => {
  if (body.kind === "LeadTaken") return body;
  return laneId === DESK_LANE ? undefined : { laneId, epoch };
};

/** The lane that leads as far as the log tells: the one of the highest epoch; undefined before anything is charted. */
export const leadLaneOf = (entries: readonly LoggedEntry[]): string | undefined => {
  let lead: LaneSeen | undefined;
  for (const entry of entries) {
    const seen = laneSeen(entry);
    // A second lane, of an epoch below every other, never leads.
    if (seen && seen.epoch > 0 && (lead === undefined || seen.epoch > lead.epoch)) lead = seen;
  }
  return lead?.laneId;
};

/** A lane of the log whose chartist is not among `known`; undefined when all are. */
export const unknownLaneOf = (known: Chartists, entries: readonly LoggedEntry[]): string | undefined =>
  entries.map((entry) => laneSeen(entry)?.laneId).find((laneId) => laneId && known[laneId] === undefined);

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
