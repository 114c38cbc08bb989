import { Worker } from "node:worker_threads";
import { err, ok, type Result } from "@courtloom/core";
import type { WatchDesign } from "@courtloom/decisions";
import type { FrozenWatch } from "@courtloom/match-log";
import type { Timers } from "../runtime.ts";

/** `failed`: the thread ended before it answered. `late`: no answer in time. `closed`: the process is stopping. */
export type NotFrozen = "failed" | "late" | "closed";
type Frozen = Result<readonly FrozenWatch[], NotFrozen>;

/** Works out watches in threads, so that the courts go on meanwhile. */
export interface WatchFreezer {
  /** The watches of the designs, in their order. Never rejects. */
  readonly freeze: (designs: readonly WatchDesign[]) => Promise<Frozen>;
  /** Ends the threads; whoever waits hears `closed`. */
  readonly close: () => Promise<void>;
}

export interface WatchFreezerOptions {
  readonly timers: Timers;
  /** Threads, at least 1. All are started at once, since loading their program takes longer than their work. */
  readonly threads: number;
  /** How long an answer is waited for, the queue included. */
  readonly waitMs: number;
  /** The thread's program. */
  readonly program?: URL;
}

interface Job {
  readonly designs: readonly WatchDesign[];
  readonly done: (frozen: Frozen) => void;
}

interface Thread {
  readonly worker: Worker;
  job: Job | undefined;
}

const OWN_PROGRAM = new URL("./watch-worker.ts", import.meta.url);

/** A thread without the process's environment (it holds secrets) and without what the process preloads. */
const startWorker = (program: URL): Worker => {
  const worker = new Worker(program, { env: {}, execArgv: [] });
  // A thread alone keeps no process alive.
  worker.unref();
  return worker;
};

/** One job to a thread at a time, the others in a queue. SPEC WA13 to WA15. */
export const createWatchFreezer = (options: WatchFreezerOptions): WatchFreezer => {
  const { timers, waitMs, program = OWN_PROGRAM } = options;
  const threads = new Set<Thread>();
  let queue: readonly Job[] = [];
  let closed = false;

  const give = (thread: Thread, job: Job): void => {
    thread.job = job;
    thread.worker.postMessage(job.designs);
  };
  const settle = (thread: Thread, frozen: Frozen): void => {
    const { job } = thread;
    thread.job = undefined;
    job?.done(frozen);
  };
  /** Out of use at once; what it was at is answered, and another thread takes its place once there is work. */
  const drop = (thread: Thread, why: NotFrozen): void => {
    if (!threads.delete(thread)) return;
    settle(thread, err(why));
    next();
  };
  const startThread = (): Thread => {
    const thread: Thread = { worker: startWorker(program), job: undefined };
    threads.add(thread);
    thread.worker.on("message", (watches: readonly FrozenWatch[]) => {
      settle(thread, ok(watches));
      next();
    });
    thread.worker.on("error", () => drop(thread, "failed"));
    thread.worker.on("exit", () => drop(thread, "failed"));
    return thread;
  };
  const idleThread = (): Thread | undefined => {
    const idle = [...threads].find(({ job }) => job === undefined);
    if (idle) return idle;
    return threads.size < options.threads ? startThread() : undefined;
  };
  const next = (): void => {
    const [job, ...rest] = queue;
    const thread = job && !closed ? idleThread() : undefined;
    if (!job || !thread) return;
    queue = rest;
    give(thread, job);
    next();
  };
  const giveUp = (job: Job): void => {
    queue = queue.filter((each) => each !== job);
    const at = [...threads].find((thread) => thread.job === job);
    if (!at) {
      job.done(err("late"));
      return;
    }
    // It hangs: what waits behind it shall not.
    void at.worker.terminate();
    drop(at, "late");
  };

  for (let i = 0; i < options.threads; i += 1) startThread();
  return {
    freeze: (designs) =>
      new Promise((resolve) => {
        if (closed) return resolve(err("closed"));
        if (designs.length === 0) return resolve(ok([]));
        const job: Job = {
          designs,
          done: (frozen) => {
            cancel();
            resolve(frozen);
          },
        };
        const cancel = timers.after(waitMs, () => giveUp(job));
        queue = [...queue, job];
        next();
      }),
    close: async () => {
      closed = true;
      for (const job of queue) job.done(err("closed"));
      queue = [];
      const all = [...threads];
      for (const thread of all) drop(thread, "closed");
      await Promise.all(all.map(({ worker }) => worker.terminate()));
    },
  };
};
