import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import type { RunTasks, TasksOf } from "./run-tasks.ts";
import type { OutcomeOf, Task } from "./task.ts";

const WORKER = new URL("./worker.ts", import.meta.url);

/** One thread takes the next task as soon as it has done the last. */
const serve = <T, O>(worker: Worker, take: () => T | undefined, done: (task: T, outcome: O) => void) =>
  new Promise<void>((resolve, reject) => {
    let current: T | undefined;
    const next = (): void => {
      current = take();
      if (current === undefined) resolve();
      else worker.postMessage(current);
    };
    worker.once("error", reject);
    worker.once("exit", (code) => reject(new Error(`A thread ended with ${code} before its work was done.`)));
    worker.on("message", (outcome: O) => {
      if (current !== undefined) done(current, outcome);
      next();
    });
    next();
  });

/** Follows a run: told of how many tasks of how many are done. */
export type Follow = (what: string) => (done: number, of: number) => void;

/** Does tasks in as many threads as there are processors. An error in one of them ends all. */
export const inThreads =
  (follow: Follow): RunTasks =>
  async <K extends Task["kind"]>(tasks: TasksOf<K>, what: string) => {
    const onDone = follow(what);
    const outcomes = new Map<Task, OutcomeOf[K]>();
    const count = Math.min(availableParallelism(), tasks.length);
    const workers = Array.from({ length: count }, () => new Worker(WORKER));
    let taken = 0;
    const take = (): Task | undefined => {
      taken += 1;
      return tasks[taken - 1];
    };
    const done = (task: Task, outcome: OutcomeOf[K]): void => {
      outcomes.set(task, outcome);
      onDone(outcomes.size, tasks.length);
    };
    try {
      await Promise.all(workers.map((worker) => serve(worker, take, done)));
    } finally {
      await Promise.all(workers.map((worker) => worker.terminate()));
    }
    return tasks.map((task) => {
      const outcome = outcomes.get(task);
      if (outcome === undefined) throw new Error("A thread left a task undone.");
      return outcome;
    });
  };
