import type { MatchView } from "@courtloom/match-log";
import { logError, type Runtime } from "../runtime.ts";
import type { DayStore, MatchRef } from "../store.ts";

/** Keeps the day's tables in step with the folds: which matches are over, and their tallies. SPEC LV12. */
export interface Settling {
  /** Looks at a fold; writes when it says something new. Never waits for the writing. */
  readonly look: (match: MatchRef, view: MatchView) => void;
  readonly forget: (match: MatchRef) => void;
}

const isOver = (view: MatchView): boolean => view.score.over || view.sealed;

export const createSettling = (days: DayStore, runtime: Runtime): Settling => {
  /** What was written last; a match that is not over is the same at any pos. */
  const written = new Map<string, string>();
  const writing = new Set<string>();
  const keyOf = ({ academyId, matchId }: MatchRef): string => `${academyId}/${matchId}`;
  const write = async (match: MatchRef, view: MatchView, says: string): Promise<void> => {
    const key = keyOf(match);
    writing.add(key);
    try {
      await days.settle(match, view);
      written.set(key, says);
    } catch (error) {
      // Looked at again with the next head or entry.
      logError(runtime, "what a match came to could not be written yet", {
        matchId: match.matchId,
        pos: view.pos,
        error,
      });
    } finally {
      writing.delete(key);
    }
  };
  return {
    look: (match, view) => {
      const says = isOver(view) ? `over at ${view.pos}` : "open";
      const key = keyOf(match);
      if (written.get(key) !== says && !writing.has(key)) void write(match, view, says);
    },
    forget: (match) => void written.delete(keyOf(match)),
  };
};
