import type { Outbox } from "./outbox.ts";
import type { HeldLane } from "./resume-lane.ts";

/** Lanes on this phone with entries that the server does not have, oldest first: earlier matches, other people. */
export const unsentLanes = async (outbox: Outbox): Promise<readonly HeldLane[]> => {
  const unsent: HeldLane[] = [];
  for (const record of await outbox.lanes()) {
    if (record.continuedBy !== undefined) continue;
    const entries = await outbox.entries(record.laneId);
    if (entries.length > record.acked) unsent.push({ record, entries, saved: true });
  }
  return unsent;
};
