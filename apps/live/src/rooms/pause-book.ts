import type { Clock } from "@courtloom/core";
import type { MatchView } from "@courtloom/match-log";

/** The phone's word for when a pause began is believed when this node saw it begin within so many ms of it. */
const AGREE_WITHIN_MS = 5_000;

interface Noted {
  readonly point: string;
  readonly sinceMs: number | undefined;
}

export interface PauseBook {
  /** When the pause that stands on a court began; undefined where clocks differ, points came late, or nobody saw. */
  readonly sinceMs: (courtId: string, view: MatchView | undefined) => number | undefined;
}

/**
 * Notes when pauses begin. A phone's clock may be wrong and its points may come late, and a node that has just
 * been started has not seen the point: only where both clocks agree is the time known. SPEC LV51.
 */
export const createPauseBook = (clock: Pick<Clock, "wallMs">): PauseBook => {
  const noted = new Map<string, Noted>();
  return {
    sinceMs: (courtId, view) => {
      const last = view?.points.at(-1);
      if (!view || !last) return undefined;
      const point = `${view.matchId} ${view.points.length} ${last.id}`;
      const before = noted.get(courtId);
      if (before?.point === point) return before.sinceMs;
      const isAgreed = before !== undefined && Math.abs(clock.wallMs() - last.wallMs) <= AGREE_WITHIN_MS;
      const sinceMs = isAgreed ? last.wallMs : undefined;
      noted.set(courtId, { point, sinceMs });
      return sinceMs;
    },
  };
};
