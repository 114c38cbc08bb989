import type { EntryBody, LoggedEntry } from "@courtloom/match-log";
import { standingFacts } from "./standing-facts.ts";

const UNDOABLE: ReadonlySet<EntryBody["kind"]> = new Set<EntryBody["kind"]>([
  "PointCharted",
  "PointReplayed",
  "PenaltyGiven",
  "ScoreStated",
  "ServerStated",
  "EndsStated",
  "MatchEnded",
]);

/**
 * The last fact that still stands and that undo would void; `undefined` when there is none. Facts of earlier
 * lanes count: whoever takes over can mend what came before. Entries set aside do not, as they changed nothing.
 */
export const lastUndoable = (
  log: readonly LoggedEntry[],
  setAside: ReadonlySet<string>,
): LoggedEntry | undefined =>
  standingFacts(log).findLast(({ entry }) => UNDOABLE.has(entry.body.kind) && !setAside.has(entry.id));
