import { parentPort, workerData } from "node:worker_threads";
import { fitAcademy } from "@courtloom/decisions";

// The program of a thread beside the courts: an academy's tallies in, its fit out, then it ends. SPEC HF12.
if (parentPort === null) throw new Error("bug: started as a program of its own; it is a thread's");
parentPort.postMessage(fitAcademy(workerData as Parameters<typeof fitAcademy>[0]));
