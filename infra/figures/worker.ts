import { parentPort } from "node:worker_threads";
import { createTaskRunner, type Task } from "./task.ts";

const port = parentPort;
if (!port) throw new Error("This file is started as a thread by npm run figures.");
const run = createTaskRunner();
port.on("message", (task: Task) => port.postMessage(run(task)));
