// A stand-in for the demo driver: runs until it is ended.
import process from "node:process";

process.on("SIGTERM", () => process.exit(0));
setInterval(() => undefined, 60_000);
