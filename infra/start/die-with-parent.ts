// Preloaded into every child (node --import): when the supervisor is gone, however it ended, the channel to
// it closes. Without this an orphan would go on serving old code on a port nobody knows.
import process from "node:process";
import { DIE_WITH_PARENT_MARK } from "./die-with-parent-mark.ts";

const HARD_AFTER_MS = 2000;

// A child's own workers inherit the preload, and their channel is none of ours: only the first one acts.
if (process.env[DIE_WITH_PARENT_MARK] !== undefined) {
  delete process.env[DIE_WITH_PARENT_MARK];
  process.on("disconnect", () => {
    setTimeout(() => process.exit(1), HARD_AFTER_MS).unref();
    process.kill(process.pid, "SIGTERM");
  });
  // The listener alone must not keep a child alive that has nothing left to do.
  process.channel?.unref();
}
