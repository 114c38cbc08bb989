import type { MatchView } from "@courtloom/match-log";
import { attemptsOfEach } from "../figures/attempts-of.ts";
import type { WatchView } from "./alert.ts";
import { watchCourse } from "./watch-course.ts";

/**
 * What every watch of a match says, as they were frozen when it opened; none: empty. A pure function of the view, so
 * that a corrected log says what a log charted right says. SPEC WA1.
 */
export const watchesOf = (view: MatchView): readonly WatchView[] => {
  const { watches } = view.opened;
  if (watches.length === 0) return [];
  const attempts = attemptsOfEach(
    view,
    watches.map(({ side, rate }) => ({ side, figure: rate })),
  );
  return watches.map((watch, i) => watchCourse(view, watch, attempts[i] ?? []));
};
