import { parentPort } from "node:worker_threads";
import { freezeWatch, type WatchDesign } from "@courtloom/decisions";

// The program of a thread beside the courts: designs in, their frozen watches out, in the same order. SPEC WA13.
if (parentPort === null) throw new Error("bug: started as a program of its own; it is a thread's");
const port = parentPort;
port.on("message", (designs: readonly WatchDesign[]) => port.postMessage(designs.map(freezeWatch)));
