import type { LoggedEntry } from "@courtloom/match-log";

/** The entries of a log that nobody took back, in order. */
export const standingFacts = (log: readonly LoggedEntry[]): readonly LoggedEntry[] => {
  const voided = new Set<string>();
  for (const { entry } of log) {
    if (entry.body.kind === "EntryVoided") voided.add(entry.body.target);
    if (entry.body.kind === "EntryRestored") voided.delete(entry.body.target);
  }
  return log.filter(({ entry }) => !voided.has(entry.id));
};
