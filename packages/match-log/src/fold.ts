import { assert, err, ok, type Result } from "@courtloom/core";
import { amendFact, voidAmendment } from "./amend-fact.ts";
import {
  type Correction,
  type EntryAmended,
  type EntryBody,
  type EntryInserted,
  type Fact,
  type LoggedEntry,
  SECOND_EPOCH,
} from "./entry.ts";
import { freshProgress } from "./fresh-progress.ts";
import type { MatchOpened } from "./opened.ts";
import { type Progress, replayFact } from "./replay.ts";
import type { Trail, TrailFact } from "./trail.ts";
import type { MatchView } from "./view.ts";

export type FoldError = "empty_log" | "no_opening" | "bad_format";

/** The fold while it works: the only mutable thing in this package, never handed out. */
interface Folding {
  readonly opened: MatchOpened;
  pos: number;
  epoch: number;
  sealed: boolean;
  facts: TrailFact[];
  index: Map<string, number>;
  /** The fact that each amendment is about. */
  amends: Map<string, string>;
  refused: Trail["refused"][number][];
  second: Trail["second"][number][];
  progress: Progress;
}

const CORRECTIONS: ReadonlySet<EntryBody["kind"]> = new Set<Correction["kind"]>([
  "EntryAmended",
  "EntryInserted",
  "EntryVoided",
  "EntryRestored",
]);

const isCorrection = (body: EntryBody): body is Correction => CORRECTIONS.has(body.kind);

const replayAll = (folding: Folding): void => {
  const fresh = freshProgress(folding.opened);
  assert(fresh.ok, "the opening was folded before");
  folding.progress = fresh.value;
  const byId = new Map(folding.facts.map((fact) => [fact.id, fact]));
  for (const fact of folding.facts) replayFact(folding.progress, fact, byId);
};

/** Whose saying a correction takes over, if it does and the entry `from` stands beside the score. */
const sourceOf = (
  folding: Folding,
  from: string | undefined,
): Pick<TrailFact, "laneId" | "from"> | undefined => {
  if (from === undefined) return undefined;
  const source = [...folding.refused, ...folding.second].find(({ id }) => id === from);
  return source && { laneId: source.laneId, from };
};

const factOf = ({ pos, laneId, entry }: LoggedEntry, fact: Fact): TrailFact => ({
  id: entry.id,
  pos,
  laneId,
  wallMs: entry.wallMs,
  fact,
  saidAt: pos,
  voided: false,
});

const addFact = (folding: Folding, logged: LoggedEntry, fact: Fact): TrailFact => {
  const added = factOf(logged, fact);
  folding.index.set(added.id, folding.facts.length);
  folding.facts.push(added);
  return added;
};

const insertFact = (folding: Folding, logged: LoggedEntry, body: EntryInserted): boolean => {
  const at = body.before === undefined ? folding.facts.length : folding.index.get(body.before);
  if (at === undefined) return false;
  folding.facts.splice(at, 0, { ...factOf(logged, body.fact), ...sourceOf(folding, body.from) });
  for (let i = at; i < folding.facts.length; i += 1) {
    const moved = folding.facts[i];
    if (moved) folding.index.set(moved.id, i);
  }
  return true;
};

const amend = (folding: Folding, { pos, entry }: LoggedEntry, body: EntryAmended): boolean => {
  const at = folding.index.get(body.target);
  const target = at === undefined ? undefined : folding.facts[at];
  if (at === undefined || target === undefined) return false;
  const said = { id: entry.id, fact: body.to, saidAt: pos };
  folding.facts[at] = amendFact(target, said, sourceOf(folding, body.from));
  folding.amends.set(entry.id, body.target);
  return true;
};

/** Voids or restores a fact, or one of its amendments. */
const setVoided = (folding: Folding, id: string, voided: boolean): boolean => {
  const amendedId = folding.amends.get(id);
  const at = folding.index.get(amendedId ?? id);
  const target = at === undefined ? undefined : folding.facts[at];
  if (at === undefined || target === undefined) return false;
  folding.facts[at] = amendedId === undefined ? { ...target, voided } : voidAmendment(target, id, voided);
  return true;
};

const correct = (folding: Folding, logged: LoggedEntry, body: Correction): boolean => {
  switch (body.kind) {
    case "EntryInserted":
      return insertFact(folding, logged, body);
    case "EntryAmended":
      return amend(folding, logged, body);
    default:
      return setVoided(folding, body.target, body.kind === "EntryVoided");
  }
};

/**
 * Takes in one entry without replaying: answers the fact that was added, `corrected` when
 * everything has to be replayed, or nothing when the score is untouched. SPEC L3 to L8.
 */
const takeIn = (folding: Folding, logged: LoggedEntry): TrailFact | "corrected" | undefined => {
  const { body, id } = logged.entry;
  const { pos, epoch, laneId } = logged;
  assert(pos === folding.pos + 1, `entries are dense: ${pos} after ${folding.pos}`);
  folding.pos = pos;
  const refuse = (reason: Trail["refused"][number]["reason"]): undefined => {
    folding.refused.push({ pos, id, laneId, reason });
    return undefined;
  };
  if (epoch === SECOND_EPOCH) {
    folding.second.push({ id, laneId });
    return undefined;
  }
  const fromDesk = epoch === 0;
  if (!fromDesk && epoch < folding.epoch) return refuse("notLead");
  folding.epoch = Math.max(folding.epoch, epoch);
  if (body.kind === "MatchOpened") return refuse("secondOpening");
  if (body.kind === "LeadTaken") {
    folding.epoch = Math.max(folding.epoch, body.epoch);
    return undefined;
  }
  if (body.kind === "MatchSealed") {
    folding.sealed = true;
    return undefined;
  }
  if (folding.sealed && !fromDesk) return refuse("sealed");
  if (!isCorrection(body)) return addFact(folding, logged, body);
  return correct(folding, logged, body) ? "corrected" : refuse("unknownTarget");
};

const begin = (opening: LoggedEntry | undefined): Result<Folding, FoldError> => {
  if (!opening) return err("empty_log");
  const { body } = opening.entry;
  if (body.kind !== "MatchOpened" || opening.pos !== 1) return err("no_opening");
  const progress = freshProgress(body);
  if (!progress.ok) return progress;
  return ok({
    opened: body,
    pos: 1,
    epoch: 0,
    sealed: false,
    facts: [],
    index: new Map(),
    amends: new Map(),
    refused: [],
    second: [],
    progress: progress.value,
  });
};

const resume = (view: MatchView): Folding => ({
  opened: view.opened,
  pos: view.pos,
  epoch: view.trail.epoch,
  sealed: view.sealed,
  facts: [...view.trail.facts],
  index: new Map(view.trail.facts.map((fact, i) => [fact.id, i])),
  amends: new Map(
    view.trail.facts.flatMap(({ id, sayings = [] }) => sayings.slice(1).map((saying) => [saying.id, id])),
  ),
  refused: [...view.trail.refused],
  second: [...view.trail.second],
  progress: {
    board: view.trail.board,
    points: [...view.points],
    setAside: view.setAside.filter((s) => !view.trail.refused.some((r) => r.pos === s.pos)),
    level: view.level,
    subjects: view.subjects,
    endOfA: view.endOfA,
    suspended: view.suspended,
  },
});

const toView = ({ opened, pos, epoch, sealed, facts, refused, second, progress }: Folding): MatchView => ({
  matchId: opened.matchId,
  pos,
  opened,
  score: progress.board.state,
  points: progress.points,
  setAside: [
    ...progress.setAside,
    ...refused.map(({ pos: at, id, reason }) => ({ pos: at, id, reason })),
  ].sort((a, b) => a.pos - b.pos),
  level: progress.level,
  subjects: progress.subjects,
  endOfA: progress.endOfA,
  suspended: progress.suspended,
  sealed,
  trail: { board: progress.board, facts, epoch, refused, second },
});

/** The view after a log's first entry. Errors: the entry is no opening, or its format cannot be played. */
export const startView = (opening: LoggedEntry): Result<MatchView, FoldError> => {
  const folding = begin(opening);
  return folding.ok ? ok(toView(folding.value)) : folding;
};

/**
 * The view after one more entry, which must be at `view.pos + 1` (a gap is the caller's to fill; anything
 * else is a bug). The given view is left as it was. Same result as `foldLog` over the whole log.
 */
export const applyEntry = (view: MatchView, logged: LoggedEntry): MatchView => {
  const folding = resume(view);
  const taken = takeIn(folding, logged);
  if (taken === "corrected") replayAll(folding);
  else if (taken) replayFact(folding.progress, taken, new Map(folding.facts.map((f) => [f.id, f])));
  return toView(folding);
};

/**
 * The view after a whole log, dense from pos 1. Corrections are gathered first and the facts replayed
 * once, so a log with many corrections costs no more than one without. SPEC L5.
 */
export const foldLog = (entries: readonly LoggedEntry[]): Result<MatchView, FoldError> => {
  const folding = begin(entries[0]);
  if (!folding.ok) return folding;
  for (let i = 1; i < entries.length; i += 1) {
    const logged = entries[i];
    if (logged) takeIn(folding.value, logged);
  }
  replayAll(folding.value);
  return ok(toView(folding.value));
};
