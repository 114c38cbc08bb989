import { err, ok, type Result } from "@courtloom/core";
import type { Entry } from "@courtloom/match-log";
import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import { isSwept } from "./is-swept.ts";
import type { LaneRecord } from "./lane-record.ts";
import type { KnownLog, Outbox, OutboxError } from "./outbox.ts";

interface HeldEntry {
  readonly laneId: string;
  readonly n: number;
  readonly entry: Entry;
}

interface OutboxSchema extends DBSchema {
  lanes: { key: string; value: LaneRecord };
  entries: { key: [string, number]; value: HeldEntry; indexes: { lane: string } };
  logs: { key: string; value: KnownLog };
}

type Database = IDBPDatabase<OutboxSchema>;

const DATABASE = "courtloom-outbox";
const VERSION = 1;
/** "strict": the promise resolves when the device has it on disk, not only in a cache. */
const WRITE = { durability: "strict" } as const;

const isTaken = (error: unknown): boolean =>
  error instanceof DOMException && error.name === "ConstraintError";

const attempt = async (write: () => Promise<unknown>): Promise<Result<void, OutboxError>> => {
  try {
    await write();
    return ok(undefined);
  } catch (error) {
    return err(isTaken(error) ? "taken" : "unavailable");
  }
};

const add = (db: Database, laneId: string, entry: Entry) =>
  attempt(async () => {
    const tx = db.transaction("entries", "readwrite", WRITE);
    await Promise.all([tx.store.add({ laneId, n: entry.n, entry }), tx.done]);
  });

const fork = (db: Database, closed: LaneRecord, opened: LaneRecord, moved: readonly Entry[]) =>
  attempt(async () => {
    const tx = db.transaction(["lanes", "entries"], "readwrite", WRITE);
    const lanes = tx.objectStore("lanes");
    const entries = tx.objectStore("entries");
    await Promise.all([
      lanes.put(closed),
      lanes.put(opened),
      ...moved.map((entry) => entries.add({ laneId: opened.laneId, n: entry.n, entry })),
      tx.done,
    ]);
  });

const sweep = async (db: Database, wallMs: number): Promise<number> => {
  const tx = db.transaction(["lanes", "entries", "logs"], "readwrite", WRITE);
  const lanes = await tx.objectStore("lanes").getAll();
  const swept = new Set<LaneRecord>();
  for (const lane of lanes) {
    const keys = await tx.objectStore("entries").index("lane").getAllKeys(lane.laneId);
    if (!isSwept(lane, keys.length, wallMs)) continue;
    swept.add(lane);
    for (const key of keys) await tx.objectStore("entries").delete(key);
    await tx.objectStore("lanes").delete(lane.laneId);
  }
  const wanted = new Set(lanes.filter((lane) => !swept.has(lane)).map((lane) => lane.matchId));
  for (const lane of swept) if (!wanted.has(lane.matchId)) await tx.objectStore("logs").delete(lane.matchId);
  await tx.done;
  return swept.size;
};

/**
 * The outbox of a browser, in IndexedDB. `undefined` when the browser will not open one; the pad then
 * uses memory and says so.
 */
export const openIdbOutbox = async (name: string = DATABASE): Promise<Outbox | undefined> => {
  let db: Database;
  try {
    db = await openDB<OutboxSchema>(name, VERSION, {
      upgrade: (upgraded) => {
        upgraded.createObjectStore("lanes", { keyPath: "laneId" });
        const entries = upgraded.createObjectStore("entries", { keyPath: ["laneId", "n"] });
        // Equal index keys come in the order of the primary key: a lane's entries by n.
        entries.createIndex("lane", "laneId");
        upgraded.createObjectStore("logs", { keyPath: "matchId" });
      },
      // A page of a newer version waits for this one to let go.
      blocking: () => db.close(),
    });
  } catch {
    // Refused by the browser (private mode, disk full, blocked by a setting): the caller falls back and says so.
    return undefined;
  }
  return {
    durable: true,
    lanes: async () => (await db.getAll("lanes")).sort((a, b) => a.startedWallMs - b.startedWallMs),
    entries: async (laneId) =>
      (await db.getAllFromIndex("entries", "lane", laneId)).map((held) => held.entry),
    saveLane: (record) =>
      attempt(async () => {
        const tx = db.transaction("lanes", "readwrite", WRITE);
        await Promise.all([tx.store.put(record), tx.done]);
      }),
    add: (laneId, entry) => add(db, laneId, entry),
    fork: (closed, opened, moved) => fork(db, closed, opened, moved),
    log: (matchId) => db.get("logs", matchId),
    saveLog: (log) => attempt(() => db.put("logs", log)),
    sweep: (wallMs) => sweep(db, wallMs),
  };
};
