import { err } from "@courtloom/core";
import type { Entry } from "@courtloom/match-log";
import { createMemoryOutbox, type Outbox } from "@courtloom/sync";
import type { Stream } from "./stream.ts";
import type { VirtualTime } from "./virtual-time.ts";

/** A phone's storage: writes take time, and a page that ends takes its unfinished ones with it. */
export interface VirtualDisk {
  /** The storage as a new page sees it; the page before it can no longer write. */
  readonly open: () => Outbox;
  /** What is stored, whoever asks. */
  readonly held: () => Outbox;
  /** Every entry that is stored, of all lanes. */
  readonly entries: () => Promise<readonly Entry[]>;
  readonly wipe: () => void;
  /** While full, nothing new is stored and the page is told so. */
  readonly fill: (isFull: boolean) => void;
}

const OPERATIONS = ["lanes", "entries", "saveLane", "add", "fork", "log", "saveLog", "sweep"] as const;

/** What answers with a `Result`; a full storage refuses it. */
const WRITES: ReadonlySet<(typeof OPERATIONS)[number]> = new Set(["saveLane", "add", "fork"]);

export const createVirtualDisk = (time: VirtualTime, stream: Stream): VirtualDisk => {
  let held = createMemoryOutbox();
  let page = 0;
  let isFull = false;
  const slowed = (mine: number): Outbox => {
    const operation = (name: (typeof OPERATIONS)[number]) => {
      return async (...args: readonly unknown[]): Promise<unknown> => {
        await time.wait(stream.int(1, 12));
        if (mine !== page) return new Promise(() => undefined);
        if (isFull && WRITES.has(name)) return err("unavailable");
        const run = held[name] as (...given: readonly unknown[]) => Promise<unknown>;
        return run(...args);
      };
    };
    const operations = Object.fromEntries(OPERATIONS.map((name) => [name, operation(name)]));
    return { durable: true, ...operations } as unknown as Outbox;
  };
  return {
    open: () => {
      page += 1;
      return slowed(page);
    },
    held: () => held,
    entries: async () => {
      const lanes = await held.lanes();
      const all = await Promise.all(lanes.map((lane) => held.entries(lane.laneId)));
      return all.flat();
    },
    wipe: () => {
      held = createMemoryOutbox();
    },
    fill: (full) => {
      isFull = full;
    },
  };
};
