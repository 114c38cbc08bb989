import type { Entry } from "@courtloom/match-log";
import type { FiledLane, LaneFile } from "@courtloom/protocol";
import { LANE_FILE_FORMAT, LANE_FILE_VERSION } from "@courtloom/protocol/names";
import type { LaneRecord } from "./lane-record.ts";
import type { Outbox } from "./outbox.ts";

/** `unsent`: what the server is not known to hold, of every match. A match: all of its lanes, whole. */
export type FileWish = "unsent" | { readonly matchId: string };

const isWished = (wish: FileWish, lane: LaneRecord): boolean =>
  wish === "unsent" || wish.matchId === lane.matchId;

const toFiled = (record: LaneRecord, entries: readonly Entry[]): FiledLane => {
  const { laneId, matchId, level, staff = false, incarnation } = record;
  return { laneId, matchId, level, staff, ...(incarnation === undefined ? {} : { incarnation }), entries };
};

/**
 * This phone's lanes as a file, for a phone that cannot send: ids and entries, no names. What a lane handed on to
 * the one that continues it is in that one alone. `undefined` when there is nothing to save. SPEC SY21.
 */
export const fileLanes = async (
  outbox: Outbox,
  wish: FileWish,
  writtenMs: number,
): Promise<LaneFile | undefined> => {
  const filed = new Set<string>();
  const lanes: FiledLane[] = [];
  // The later lane first: it holds what an earlier one of two writers handed on, under the same ids.
  for (const record of (await outbox.lanes()).toReversed()) {
    const held = await outbox.entries(record.laneId);
    const own = held.filter(({ id }) => !filed.has(id));
    for (const { id } of held) filed.add(id);
    const wanted = wish === "unsent" ? own.filter(({ n }) => n > record.acked) : own;
    if (isWished(wish, record) && wanted.length > 0) lanes.unshift(toFiled(record, wanted));
  }
  if (lanes.length === 0) return undefined;
  return { format: LANE_FILE_FORMAT, v: LANE_FILE_VERSION, writtenMs, lanes };
};
