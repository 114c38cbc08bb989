import type { ByPlayer } from "@courtloom/core";
import type { ChartingLevel, Entry } from "@courtloom/match-log";
import { laneDevice } from "./lane-device.ts";
import type { LaneRecord } from "./lane-record.ts";
import type { Outbox } from "./outbox.ts";

/** Who charts what, where. */
export interface LaneWanted {
  readonly matchId: string;
  readonly courtName: string;
  readonly chartist: string;
  readonly names: ByPlayer<string>;
  readonly level: ChartingLevel;
  readonly staff?: boolean;
  /** Only a second lane (true) or only one that leads or led (false); absent: whichever this person used last. */
  readonly second?: boolean;
}

/** A lane with what the phone holds of it. `saved` is false when the phone could not store it. */
export interface HeldLane {
  readonly record: LaneRecord;
  readonly entries: readonly Entry[];
  readonly saved: boolean;
}

/**
 * This person's lane on this match: the one on the phone, which survives reloads and closed
 * browsers, or a new one. Another person's lane on the same phone is never continued.
 */
export const resumeLane = async (
  outbox: Outbox,
  wanted: LaneWanted,
  wallMs: number,
  laneId: () => string = laneDevice.laneId,
): Promise<HeldLane> => {
  const lanes = await outbox.lanes();
  const held = lanes.findLast(
    (lane) =>
      lane.matchId === wanted.matchId &&
      lane.chartist === wanted.chartist &&
      lane.continuedBy === undefined &&
      (wanted.second === undefined || wanted.second === (lane.second === true)),
  );
  if (held) {
    const { courtName, names, staff } = wanted;
    const record = { ...held, courtName, names, ...(staff === undefined ? {} : { staff }) };
    return { record, entries: await outbox.entries(held.laneId), saved: true };
  }
  const { second, ...who } = wanted;
  const record: LaneRecord = {
    ...who,
    ...(second ? { second } : {}),
    laneId: laneId(),
    acked: 0,
    epoch: 0,
    rejected: [],
    startedWallMs: wallMs,
  };
  const saved = await outbox.saveLane(record);
  return { record, entries: [], saved: saved.ok };
};
