import type { Entry } from "@courtloom/match-log";
import type { LaneRecord } from "./lane-record.ts";
import type { LaneAction, LaneEvent } from "./lane-state.ts";
import type { Outbox } from "./outbox.ts";

/** The storing half of a lane's driver: carries out its writes one after the other and reports each. */
export interface LaneStorage {
  readonly store: (laneId: string, entry: Entry) => void;
  readonly fork: (action: Extract<LaneAction, { type: "fork" }>) => void;
  readonly saveLane: (record: LaneRecord) => void;
}

export const createLaneStorage = (outbox: Outbox, report: (event: LaneEvent) => void): LaneStorage => {
  // In the order of the actions: a later write never overtakes an earlier one. An outbox does not reject.
  let writing: Promise<unknown> = Promise.resolve();
  const write = (job: () => Promise<unknown>) => {
    writing = writing.then(job);
  };
  return {
    store: (laneId, entry) =>
      write(async () => {
        const added = await outbox.add(laneId, entry);
        const { n } = entry;
        const taken = !added.ok && added.error === "taken";
        report(taken ? { type: "taken", laneId, n } : { type: "stored", laneId, n, safe: added.ok });
      }),
    fork: ({ closed, opened, entries }) =>
      write(async () => {
        const forked = await outbox.fork(closed, opened, entries);
        report({ type: "forkStored", laneId: opened.laneId, count: entries.length, safe: forked.ok });
      }),
    // A record that could not be saved costs a repeated message after a reload, never an entry.
    saveLane: (record) => write(() => outbox.saveLane(record)),
  };
};
