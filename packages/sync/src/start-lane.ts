import type { Entry } from "@courtloom/match-log";
import { MAX_BATCH_ENTRIES } from "@courtloom/protocol/names";
import type { LaneRecord } from "./lane-record.ts";
import type { LaneState } from "./lane-state.ts";

/** A lane as the page finds it: new with no entries, or resumed with those that the phone holds (dense from n = 1). */
export const startLane = (record: LaneRecord, entries: readonly Entry[]): LaneState => ({
  record,
  entries,
  pending: [],
  link: "down",
  phase: "closed",
  requests: 0,
  failures: 0,
  waiting: false,
  batchSize: MAX_BATCH_ENTRIES,
  unstored: false,
});
