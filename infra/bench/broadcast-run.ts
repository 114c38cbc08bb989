import { setTimeout as wait } from "node:timers/promises";

/** One court after the other, so far apart that none is held back by the pace of its own updates. */
const EVERY_MS = 100;
/** What has not come by then is missing. */
const WITHIN_MS = 10_000;

/** A way from a point to everybody who watches. */
export interface Broadcast {
  /** Sends a court's next point; resolves when it is acknowledged, with what its viewers will be told. */
  readonly commit: (court: number) => Promise<string>;
  /** Calls `told` for each viewer that is told something, with what it is. */
  readonly onTold: (told: (what: string) => void) => void;
  readonly viewers: number;
  readonly close: () => void;
}

/** Whether `isDone` came true in time. */
const until = async (isDone: () => boolean, withinMs: number): Promise<boolean> => {
  for (const end = performance.now() + withinMs; performance.now() < end; await wait(10))
    if (isDone()) return true;
  return false;
};

/**
 * Milliseconds from sending each point, its commit included, to each viewer's being told. One point per court.
 * Throws when somebody was not told at all. Spec BN11.
 */
export const broadcastRun = async (
  broadcast: Broadcast,
  courts: number,
  withinMs = WITHIN_MS,
): Promise<readonly number[]> => {
  const toldMs = new Map<string, number[]>();
  broadcast.onTold((what) => {
    const times = toldMs.get(what) ?? [];
    times.push(performance.now());
    toldMs.set(what, times);
  });
  const latencies: number[] = [];
  for (let court = 0; court < courts; court += 1) {
    const begin = performance.now();
    const what = await broadcast.commit(court);
    const isAll = await until(() => (toldMs.get(what)?.length ?? 0) >= broadcast.viewers, withinMs);
    if (!isAll)
      throw new Error(`Only ${toldMs.get(what)?.length ?? 0} of ${broadcast.viewers} viewers were told.`);
    latencies.push(...(toldMs.get(what) ?? []).map((ms) => ms - begin));
    toldMs.delete(what);
    await wait(Math.max(0, begin + EVERY_MS - performance.now()));
  }
  return latencies;
};
