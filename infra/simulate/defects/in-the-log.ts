import type { Defect } from "../defect.ts";
import { createLooseLog, type Looseness } from "./loose-log.ts";

const loose = (name: string, says: string, looseness: Looseness): Defect => ({
  name,
  says,
  database: (store, lab) => createLooseLog(store, looseness, lab),
});

/** Writes down a take-over once more than it happened. */
const toldTwice: Defect = {
  name: "take-over told twice",
  says: "the change of the lead is written twice",
  database: (store) => ({
    ...store,
    openLane: async (open) => {
      const opened = await store.openLane(open);
      if (!opened.ok || open.takeOver === undefined) return opened;
      const { academyId, matchId, laneId } = open;
      const { epoch } = opened.value;
      await store.appendDesk({ academyId, matchId, body: { kind: "LeadTaken", laneId, epoch } });
      return opened;
    },
  }),
};

/** Rules of the log on disk that are not kept. */
export const IN_THE_LOG: readonly Defect[] = [
  loose("no de-duplication", "a batch that comes again is written again", { takesAgain: true }),
  loose("pos outside the lock", "the next pos is read some time before it is used", { posOutsideLock: true }),
  loose("no gap check on the server", "a batch is taken whatever came before it", { takesGaps: true }),
  loose("cursor before entries", "a failed append has moved the lane's cursor", { cursorFirst: true }),
  loose("batch in parts", "a failed append leaves the first entries of its batch", { entryByEntry: true }),
  toldTwice,
  {
    name: "restore keeps the log's id",
    says: "an older backup comes back under the incarnation it had",
    keepsIncarnation: true,
  },
  {
    name: "commit before the disk",
    says: "the last 400 ms of commits go with the database server",
    forgetsMs: 400,
  },
];
