import { Worker } from "node:worker_threads";
import type { AcademyFit, fitAcademy } from "@courtloom/decisions";

type Tallies = Parameters<typeof fitAcademy>[0];

const PROGRAM = new URL("./fit-worker.ts", import.meta.url);

/**
 * Fits an academy in a thread of its own, since it takes seconds to a minute and the courts go on meanwhile. The
 * thread has none of the process's environment and keeps no process alive. Rejects when it ends without a fit.
 */
export const fitInThread = (tallies: Tallies): Promise<AcademyFit> =>
  new Promise((resolve, reject) => {
    const worker = new Worker(PROGRAM, { workerData: tallies, env: {}, execArgv: [] });
    worker.unref();
    worker.on("message", resolve);
    worker.on("error", reject);
    worker.on("exit", () => reject(new Error("the thread that fits an academy ended without a fit")));
  });
