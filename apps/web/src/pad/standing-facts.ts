import { type LoggedEntry, SECOND_EPOCH } from "@courtloom/match-log";

/** The entries of a log that nobody took back, in order; second lanes are no matter of the score. */
export const standingFacts = (log: readonly LoggedEntry[]): readonly LoggedEntry[] => {
  const voided = new Set<string>();
  for (const { entry } of log) {
    if (entry.body.kind === "EntryVoided") voided.add(entry.body.target);
    if (entry.body.kind === "EntryRestored") voided.delete(entry.body.target);
  }
  return log.filter(({ entry, epoch }) => epoch !== SECOND_EPOCH && !voided.has(entry.id));
};
