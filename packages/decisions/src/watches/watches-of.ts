import type { MatchView } from "@courtloom/match-log";
import { attemptsOf } from "../figures/attempts-of.ts";
import type { WatchView } from "./alert.ts";
import { watchCourse } from "./watch-course.ts";

/**
 * What every watch of a match says, as they were frozen when it opened; none: empty. A pure function of the view, so
 * that a corrected log says what a log charted right says. SPEC WA1.
 */
export const watchesOf = (view: MatchView): readonly WatchView[] =>
  view.opened.watches.map((watch) => watchCourse(view, watch, attemptsOf(view, watch.side, watch.rate)));
