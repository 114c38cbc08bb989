import { err, ok } from "@courtloom/core";
import type { Entry } from "@courtloom/match-log";
import { isSwept } from "./is-swept.ts";
import type { LaneRecord } from "./lane-record.ts";
import type { KnownLog, Outbox } from "./outbox.ts";

/** An outbox for tests and for browsers that will not store anything. Gone with the page. */
export const createMemoryOutbox = (): Outbox => {
  const lanes = new Map<string, LaneRecord>();
  const entries = new Map<string, readonly Entry[]>();
  const logs = new Map<string, KnownLog>();
  const of = (laneId: string) => entries.get(laneId) ?? [];
  const has = (laneId: string, n: number) => of(laneId).some((entry) => entry.n === n);
  const byNumber = (list: readonly Entry[]) => [...list].sort((a, b) => a.n - b.n);

  return {
    durable: false,
    lanes: async () => [...lanes.values()].sort((a, b) => a.startedWallMs - b.startedWallMs),
    entries: async (laneId) => of(laneId),
    saveLane: async (record) => {
      lanes.set(record.laneId, record);
      return ok(undefined);
    },
    add: async (laneId, entry) => {
      if (has(laneId, entry.n)) return err("taken");
      entries.set(laneId, byNumber([...of(laneId), entry]));
      return ok(undefined);
    },
    fork: async (closed, opened, moved) => {
      if (moved.some((entry) => has(opened.laneId, entry.n))) return err("taken");
      lanes.set(closed.laneId, closed);
      lanes.set(opened.laneId, opened);
      entries.set(opened.laneId, byNumber([...of(opened.laneId), ...moved]));
      return ok(undefined);
    },
    log: async (matchId) => logs.get(matchId),
    saveLog: async (log) => {
      logs.set(log.matchId, log);
      return ok(undefined);
    },
    sweep: async (wallMs) => {
      const swept = [...lanes.values()].filter((lane) => isSwept(lane, of(lane.laneId).length, wallMs));
      for (const lane of swept) {
        lanes.delete(lane.laneId);
        entries.delete(lane.laneId);
      }
      const wanted = new Set([...lanes.values()].map((lane) => lane.matchId));
      for (const lane of swept) if (!wanted.has(lane.matchId)) logs.delete(lane.matchId);
      return swept.length;
    },
  };
};
