import type { Result } from "@courtloom/core";
import type { Entry } from "@courtloom/match-log";
import type { LaneRecord } from "./lane-record.ts";
import type { LaneAction, LaneEvent } from "./lane-state.ts";
import type { Timers } from "./mirror-timers.ts";
import type { Outbox, OutboxError } from "./outbox.ts";

/** The storing half of a lane's driver: carries out its writes one after the other and reports each. */
export interface LaneStorage {
  readonly store: (laneId: string, entry: Entry) => void;
  readonly fork: (action: Extract<LaneAction, { type: "fork" }>) => void;
  readonly saveLane: (record: LaneRecord) => void;
  /** Tries no more. */
  readonly stop: () => void;
}

/** A phone that could not store tries again after so long, also when nothing new is charted. */
const STORE_AGAIN_MS = 3_000;

type Write = () => Promise<Result<void, OutboxError>>;

const isRefused = (written: Result<void, OutboxError>): boolean =>
  !written.ok && written.error === "unavailable";

/**
 * What the phone could not store yet, in order. A later write waits behind it, so that what is stored is
 * always the beginning of the lane: with a hole in it, a reopened page could not go on. SPEC SY40.
 */
const createBacklog = () => {
  let held: readonly Write[] = [];
  const flush = async (): Promise<boolean> => {
    while (held[0]) {
      if (isRefused(await held[0]())) return false;
      held = held.slice(1);
    }
    return true;
  };
  return {
    /** Carries out what waits, then `write`; what cannot be stored waits. */
    write: async (write: Write): Promise<Result<void, OutboxError>> => {
      if (await flush()) {
        const written = await write();
        if (!isRefused(written)) return written;
      }
      held = [...held, write];
      return { ok: false, error: "unavailable" };
    },
    flush,
    isEmpty: () => held.length === 0,
  };
};

export const createLaneStorage = (
  outbox: Outbox,
  timers: Timers,
  report: (event: LaneEvent) => void,
): LaneStorage => {
  // In the order of the actions: a later write never overtakes an earlier one. An outbox does not reject.
  let writing: Promise<unknown> = Promise.resolve();
  let stopTimer = (): void => undefined;
  const backlog = createBacklog();
  const tryLater = (): void => {
    stopTimer();
    if (!backlog.isEmpty())
      stopTimer = timers.after(STORE_AGAIN_MS, () => attempt(async () => void (await backlog.flush())));
  };
  const attempt = (job: () => Promise<void>): void => {
    writing = writing.then(async () => {
      const wasBehind = !backlog.isEmpty();
      await job();
      if (wasBehind && backlog.isEmpty()) report({ type: "caughtUp" });
      tryLater();
    });
  };
  const write = (job: Write, told: (written: Result<void, OutboxError>) => void): void =>
    attempt(async () => told(await backlog.write(job)));
  return {
    store: (laneId, entry) =>
      write(
        () => outbox.add(laneId, entry),
        (added) => {
          const { n } = entry;
          const taken = !added.ok && added.error === "taken";
          report(taken ? { type: "taken", laneId, n } : { type: "stored", laneId, n, safe: added.ok });
        },
      ),
    fork: ({ closed, opened, entries }) =>
      write(
        () => outbox.fork(closed, opened, entries),
        (forked) =>
          report({ type: "forkStored", laneId: opened.laneId, count: entries.length, safe: forked.ok }),
      ),
    // A record that could not be saved costs a repeated message after a reload, never an entry.
    saveLane: (record) =>
      write(
        () => outbox.saveLane(record),
        () => undefined,
      ),
    stop: () => stopTimer(),
  };
};
