import { type LoggedEntry, SECOND_EPOCH } from "./entry.ts";

/** Where somebody else took the lead from a lane of `epoch`; the log's end if nobody did. */
const endOfLead = (entries: readonly LoggedEntry[], epoch: number): number => {
  const at = entries.findIndex(({ entry: { body } }) => body.kind === "LeadTaken" && body.epoch > epoch);
  return at < 0 ? entries.length : at;
};

/**
 * The match as one lane tells it: a log that folds to the score that its person saw. For a lane that lost the
 * lead, everything until then and after that its own entries alone; for a second lane, the opening and its own
 * entries. Dense from pos 1; `entries` likewise. A lane without entries tells what was before it. SPEC L12.
 */
export const logOfLane = (entries: readonly LoggedEntry[], laneId: string): readonly LoggedEntry[] => {
  const own = entries.filter((logged) => logged.laneId === laneId);
  const epoch = own[0]?.epoch ?? SECOND_EPOCH;
  const until = epoch === SECOND_EPOCH ? 1 : endOfLead(entries, epoch);
  const told = [...entries.slice(0, until), ...entries.slice(until).filter((e) => e.laneId === laneId)];
  return told.map((logged, i) => ({
    ...logged,
    pos: i + 1,
    epoch: logged.laneId === laneId && epoch === SECOND_EPOCH ? 1 : logged.epoch,
  }));
};
