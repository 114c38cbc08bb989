import {
  type EntryBody,
  type EntryRestored,
  type EntryVoided,
  type LoggedEntry,
  SECOND_EPOCH,
} from "@courtloom/match-log";

/** Facts of play; what only sets the charting (level, whose balls) has its own switch and is passed over. */
const UNDOABLE: ReadonlySet<EntryBody["kind"]> = new Set<EntryBody["kind"]>([
  "PointCharted",
  "PointReplayed",
  "PenaltyGiven",
  "ScoreStated",
  "ServerStated",
  "EndsStated",
  "PlaySuspended",
  "PlayResumed",
  "MatchEnded",
  "EntryInserted",
  "EntryAmended",
]);

/** The last thing that was done and still stands, and the one entry that takes it back. */
export interface Undoable {
  readonly done: LoggedEntry;
  readonly by: EntryVoided | EntryRestored;
}

const takesBack = ({ entry }: LoggedEntry): Undoable["by"] | undefined => {
  const { id, body } = entry;
  if (body.kind === "EntryVoided") return { kind: "EntryRestored", target: body.target };
  if (body.kind === "EntryRestored") return { kind: "EntryVoided", target: body.target };
  return UNDOABLE.has(body.kind) ? { kind: "EntryVoided", target: id } : undefined;
};

const isSame = (a: EntryBody, b: Undoable["by"] | undefined): boolean =>
  b !== undefined && a.kind === b.kind && a.target === b.target;

/**
 * What undo would take back: the last fact or correction that still stands. A void or restore that does just what
 * undo would have done then is an undo itself, and is not undone again; taking something out or putting it back
 * a second time does nothing. Entries in `refused` never did anything; second lanes are no matter of the score.
 * Facts of earlier lanes count: whoever takes over can mend what came before. SPEC PD8, PD86.
 */
export const lastUndoable = (
  log: readonly LoggedEntry[],
  refused: ReadonlySet<string>,
): Undoable | undefined => {
  const done: Undoable[] = [];
  const out = new Set<string>();
  for (const logged of log) {
    const { body, id } = logged.entry;
    if (logged.epoch === SECOND_EPOCH || refused.has(id)) continue;
    if (body.kind === "EntryVoided" || body.kind === "EntryRestored") {
      const isOut = body.kind === "EntryVoided";
      if (out.has(body.target) === isOut) continue;
      if (isOut) out.add(body.target);
      else out.delete(body.target);
      if (isSame(body, done.at(-1)?.by)) {
        done.pop();
        continue;
      }
    }
    const by = takesBack(logged);
    if (by) done.push({ done: logged, by });
  }
  return done.at(-1);
};
