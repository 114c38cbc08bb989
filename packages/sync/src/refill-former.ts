import { createLane, type Lane, type LaneOptions } from "./create-lane.ts";
import type { LaneRecord } from "./lane-record.ts";

/** The present lane of a match, and what the phone's earlier lanes on it run with. */
export interface RefillOptions extends Omit<LaneOptions, "record" | "entries"> {
  readonly current: Lane;
  /** Called for each lane that is looked at again. */
  readonly onLane?: (lane: Lane) => void;
}

export interface Refill {
  readonly lanes: () => readonly Lane[];
  readonly close: () => void;
}

/** Entries of a lane that another one went on from belong to that one from there. */
const ownCount = ({ continuedBy, continuedFrom }: LaneRecord): number => {
  if (continuedBy === undefined) return Number.POSITIVE_INFINITY;
  return (continuedFrom ?? 1) - 1;
};

/**
 * Whenever the log turns out to be another one (restored from a backup), asks again with each earlier lane that
 * this phone holds of the match, so that what the server lost comes back; a lane that has all is let go. SPEC SY42.
 */
export const refillFormer = ({ current, onLane, ...options }: RefillOptions): Refill => {
  const { matchId } = current.record();
  let incarnation: string | undefined;
  let running: readonly Lane[] = [];
  let isClosed = false;
  const letGo = (lane: Lane): void => {
    running = running.filter((each) => each !== lane);
    lane.close();
  };
  const run = (record: LaneRecord, entries: LaneOptions["entries"]): void => {
    const lane = createLane({ ...options, record, entries: entries.slice(0, ownCount(record)) });
    running = [...running, lane];
    onLane?.(lane);
    lane.onChange(() => {
      const { signal, unsent } = lane.status();
      if (signal === "open" && unsent === 0 && lane.record().incarnation === incarnation) letGo(lane);
    });
  };
  const lookAgain = async (): Promise<void> => {
    const lanes = await options.outbox.lanes();
    for (const record of lanes) {
      const isHere = record.matchId === matchId && record.laneId !== current.record().laneId;
      if (!isHere || record.incarnation === undefined || record.incarnation === incarnation) continue;
      if (running.some((lane) => lane.record().laneId === record.laneId)) continue;
      const entries = await options.outbox.entries(record.laneId);
      if (!isClosed && entries.length > 0) run(record, entries);
    }
  };
  const follow = (): void => {
    const now = current.record().incarnation;
    if (now === undefined || now === incarnation) return;
    incarnation = now;
    void lookAgain();
  };
  const stop = current.onChange(follow);
  follow();
  return {
    lanes: () => running,
    close: () => {
      isClosed = true;
      stop();
      for (const lane of running) lane.close();
      running = [];
    },
  };
};
