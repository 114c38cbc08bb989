import { logError, type Runtime } from "../runtime.ts";
import type { MatchRef } from "../store.ts";
import { alertChanges, type Folded } from "./alert-changes.ts";
import type { AlertStore, StoredAlert } from "./alert-store.ts";

/** Keeps the ledger in step with the folds of this node's matches. SPEC AL17, AL18. */
export interface AlertBook {
  /** A fold has changed. Never waits: the latest fold is looked at when the one before is done. */
  readonly look: (match: MatchRef, folded: Folded) => void;
  /** What the store has of a match, as a reader found it; looked at again where it is news. */
  readonly learn: (match: MatchRef, rows: readonly StoredAlert[]) => void;
  /** A match's alerts as last written or read here; empty when not known. */
  readonly rowsOf: (match: MatchRef) => readonly StoredAlert[];
  /** Looks again at what could not be written. */
  readonly retry: () => void;
  readonly forget: (match: MatchRef) => void;
  /** Called when the alerts of a match may have become others. */
  readonly onChange: (changed: (match: MatchRef) => void) => void;
}

interface Course {
  readonly match: MatchRef;
  /** To be looked at. */
  next: Folded | undefined;
  last: Folded | undefined;
  /** Undefined until the store was asked. */
  rows: readonly StoredAlert[] | undefined;
  isRunning: boolean;
}

export const createAlertBook = (store: AlertStore, runtime: Runtime): AlertBook => {
  const courses = new Map<string, Course>();
  const listeners = new Set<(match: MatchRef) => void>();
  const keyOf = ({ academyId, matchId }: MatchRef): string => `${academyId}/${matchId}`;

  const take = (course: Course, rows: readonly StoredAlert[]): void => {
    const isNews = JSON.stringify(course.rows ?? []) !== JSON.stringify(rows);
    course.rows = rows;
    if (isNews) for (const listener of listeners) listener(course.match);
  };
  const reread = async (course: Course): Promise<boolean> => {
    const read = await store.alertsOf(course.match);
    if (read.ok) take(course, read.value);
    return read.ok;
  };
  /** True when the ledger says what the log does. */
  const settle = async (course: Course, folded: Folded): Promise<boolean> => {
    const changes = () => alertChanges(folded, course.rows ?? [], runtime.clock.wallMs());
    const isFresh = course.rows === undefined;
    if (isFresh && !(await reread(course))) return false;
    if (changes().length === 0) return true;
    // Another node may have written meanwhile: what is new is judged by the ledger as it stands.
    if (!isFresh && !(await reread(course))) return false;
    const alerts = changes();
    if (alerts.length === 0) return true;
    const written = await store.writeAlerts({ ...course.match, alerts });
    if (written.ok) take(course, written.value);
    return written.ok;
  };
  const run = async (course: Course): Promise<void> => {
    if (course.isRunning) return;
    course.isRunning = true;
    try {
      for (let folded = course.next; folded; folded = course.next) {
        course.next = undefined;
        if (await settle(course, folded)) continue;
        course.next ??= folded;
        return;
      }
    } catch (error) {
      course.next ??= course.last;
      const { matchId } = course.match;
      logError(runtime, "the alerts of a match were not brought up to date", { matchId, error });
    } finally {
      course.isRunning = false;
    }
  };
  return {
    look: (match, folded) => {
      if (folded.view.opened.watches.length === 0) return;
      const { academyId, matchId } = match;
      const course = courses.get(keyOf(match)) ?? {
        match: { academyId, matchId },
        ...{ next: undefined, last: undefined, rows: undefined, isRunning: false },
      };
      courses.set(keyOf(match), course);
      // An older log than before: the store went back to a backup, and its alerts with it.
      if ((course.last?.view.pos ?? 0) > folded.view.pos) course.rows = undefined;
      course.last = folded;
      course.next = folded;
      void run(course);
    },
    learn: (match, rows) => {
      const course = courses.get(keyOf(match));
      if (!course || JSON.stringify(course.rows ?? []) === JSON.stringify(rows)) return;
      take(course, rows);
      course.next ??= course.last;
      void run(course);
    },
    rowsOf: (match) => courses.get(keyOf(match))?.rows ?? [],
    retry: () => {
      for (const course of courses.values()) void run(course);
    },
    forget: (match) => void courses.delete(keyOf(match)),
    onChange: (changed) => void listeners.add(changed),
  };
};
