import type { EntryBody, LoggedEntry } from "@courtloom/match-log";

/** Entries that say something of what was charted before them. */
const CORRECTS: ReadonlySet<EntryBody["kind"]> = new Set([
  "EntryAmended",
  "EntryInserted",
  "EntryVoided",
  "EntryRestored",
  "EndsStated",
]);

/** The last correction after the point at `raisedPos`: what took an alert's evidence away; undefined when there is none. SPEC AL3. */
export const takenBy = (entries: readonly LoggedEntry[], raisedPos: number): LoggedEntry | undefined =>
  entries.findLast(({ pos, entry }) => pos > raisedPos && CORRECTS.has(entry.body.kind));
