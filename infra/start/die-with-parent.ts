// Preloaded into every child (node --import): when the supervisor is gone, however it ended, the channel to
// it closes. Without this an orphan would go on serving old code on a port nobody knows.
import process from "node:process";

const HARD_AFTER_MS = 2000;

process.on("disconnect", () => {
  setTimeout(() => process.exit(1), HARD_AFTER_MS).unref();
  process.kill(process.pid, "SIGTERM");
});
// The listener alone must not keep a child alive that has nothing left to do.
process.channel?.unref();
