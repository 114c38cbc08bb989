import { err, ok } from "@courtloom/core";
import type { LoggedEntry } from "@courtloom/match-log";
import type { ApiLog } from "../api-store.ts";

interface MemoryLane {
  readonly matchId: string;
  readonly laneId: string;
  readonly chartist: string;
  readonly owner: string;
  readonly epoch: number;
  /** Text of each item, by n. */
  readonly items: Map<number, string>;
}

/** Lanes and logs in memory, by the entry store's rules as far as the procedures meet them. */
export const createMemoryLog = (
  isThere: (academyId: string, matchId: string) => boolean,
  wrote: () => void,
) => {
  const lanes: MemoryLane[] = [];
  const logs = new Map<string, LoggedEntry[]>();
  const logOf = (matchId: string) => logs.get(matchId) ?? [];
  const laneOf = (matchId: string, laneId: string) =>
    lanes.find((lane) => lane.matchId === matchId && lane.laneId === laneId);
  const log: ApiLog = {
    lanes: async ({ academyId, matchId }) =>
      isThere(academyId, matchId)
        ? ok(
            lanes
              .filter((lane) => lane.matchId === matchId)
              .map(({ laneId, chartist }) => ({ laneId, chartist })),
          )
        : err({ code: "unknown_match" }),
    read: async ({ academyId, matchId, after, limit }) => {
      if (!isThere(academyId, matchId)) return err({ code: "unknown_match" });
      const entries = logOf(matchId);
      return ok({ entries: entries.slice(after, after + limit), head: entries.length });
    },
    openLane: async ({ academyId, matchId, laneId, chartist, owner }) => {
      if (!isThere(academyId, matchId)) return err({ code: "unknown_match" });
      lanes.push({ matchId, laneId, chartist, owner: owner.kind, epoch: -1, items: new Map() });
      wrote();
      return ok(undefined);
    },
    append: async ({ academyId, matchId, laneId, items }) => {
      if (!isThere(academyId, matchId)) return err({ code: "unknown_match" });
      const lane = laneOf(matchId, laneId);
      if (!lane) return err({ code: "unknown_lane" });
      const logged: LoggedEntry[] = [];
      const taken = new Map(lane.items);
      for (const item of items) {
        const text = JSON.stringify(item);
        const cursor = taken.size;
        if (item.n > cursor + 1) return err({ code: "gap", expect: cursor + 1 });
        if (item.n <= cursor && taken.get(item.n) !== text)
          return err({ code: "identity_conflict", n: item.n });
        if (item.n <= cursor) continue;
        taken.set(item.n, text);
        if (!("entry" in item)) continue;
        if (logOf(matchId).some(({ entry }) => entry.id === item.entry.id))
          return err({ code: "identity_conflict", n: item.n });
        const pos = logOf(matchId).length + logged.length + 1;
        logged.push({ pos, laneId, epoch: lane.epoch, entry: item.entry });
      }
      for (const [n, text] of taken) lane.items.set(n, text);
      logs.set(matchId, [...logOf(matchId), ...logged]);
      if (logged.length > 0) wrote();
      return ok({ logged });
    },
  };
  /** A lane that a phone opened. */
  const openFromPhone = (matchId: string, laneId: string, chartist: string): void => {
    lanes.push({ matchId, laneId, chartist, owner: "courtside", epoch: 1, items: new Map() });
  };
  /** A log as it stands, whatever its lanes. */
  const put = (matchId: string, entries: readonly LoggedEntry[]): void =>
    void logs.set(matchId, [...entries]);
  return { log, lanes, logOf, openFromPhone, put };
};
