import { otherSide, type Side } from "@courtloom/core";
import type { FrozenWatch, MatchView } from "@courtloom/match-log";
import { type CusumState, NO_EVIDENCE, sinceAttempt, stepCusum } from "@courtloom/stats";
import type { FigureAttempt } from "../figures/attempts-of.ts";
import type { Episode, Moment, WatchState, WatchView } from "./alert.ts";
import { doubtAfterPoints } from "./doubt.ts";

/** The thresholds of a watch in force at an attempt, numbered from 1. SPEC WA3. */
const thresholdsAt = ({ horizon, red, amber }: FrozenWatch, attempt: number) =>
  attempt <= horizon ? { red: red.first, amber: amber.first } : { red: red.late, amber: amber.late };

/** A walk through the match; mutable only in here. */
interface Course {
  cusum: CusumState;
  episodes: Episode[];
  isOpen: boolean;
}

const patchLast = (course: Course, patch: Partial<Episode>): void => {
  const last = course.episodes.at(-1);
  if (last) course.episodes[course.episodes.length - 1] = { ...last, ...patch };
};

const takeAttempt = (
  course: Course,
  watch: FrozenWatch,
  attempt: FigureAttempt,
  pointId: string,
  isDoubtful: boolean,
) => {
  const threshold = thresholdsAt(watch, course.cusum.attempts + 1).red;
  const { state, change } = stepCusum(course.cusum, attempt.event, watch, threshold);
  course.cusum = state;
  if (change === "cleared" && course.isOpen) patchLast(course, { easedBy: pointId });
  if (!state.alerting || isDoubtful || course.isOpen) return;
  course.isOpen = true;
  course.episodes.push({ episode: course.episodes.length + 1, raisedBy: pointId });
};

/** An alert that eases is over when ends are changed, or the match is. */
const endOfPoint = (course: Course, pointId: string, isChange: boolean): void => {
  if (!isChange || !course.isOpen || course.cusum.alerting) return;
  course.isOpen = false;
  patchLast(course, { closedBy: pointId });
};

const stateOf = ({ cusum, isOpen }: Course, amber: number): WatchState => {
  if (isOpen) return cusum.alerting ? "standing" : "easing";
  return cusum.c > 0 && cusum.c >= amber ? "noticed" : "quiet";
};

const momentOf = (view: MatchView, side: Side, at: number): Moment | undefined => {
  const viewed = view.points[at];
  if (!viewed) return undefined;
  const { sets, games } = viewed.before;
  const own = side === "A" ? 0 : 1;
  const other = otherSide(side) === "A" ? 0 : 1;
  return { pointId: viewed.id, set: sets.length + 1, games: [games[own], games[other]] };
};

const runOf = (view: MatchView, side: Side, attempts: readonly FigureAttempt[], cusum: CusumState) => {
  const first = sinceAttempt(cusum);
  const from = first === undefined ? undefined : momentOf(view, side, attempts[first - 1]?.at ?? -1);
  return from && { x: cusum.runEvents, n: cusum.runAttempts, from };
};

const idsOf = (view: MatchView, attempts: readonly FigureAttempt[]): string[] =>
  attempts.flatMap(({ at }) => view.points[at]?.id ?? []);

const walk = (
  view: MatchView,
  watch: FrozenWatch,
  attempts: readonly FigureAttempt[],
  doubt: readonly boolean[],
): Course => {
  const course: Course = { cusum: NO_EVIDENCE, episodes: [], isOpen: false };
  let next = 0;
  view.points.forEach(({ id, before, after }, at) => {
    for (let attempt = attempts[next]; attempt?.at === at; attempt = attempts[next]) {
      takeAttempt(course, watch, attempt, id, doubt[at] ?? false);
      next += 1;
    }
    endOfPoint(course, id, after.changesOfEnds !== before.changesOfEnds || after.over);
  });
  return course;
};

/**
 * What one watch says of a match, given the attempts of its rate in the order of play: a pure function of the view,
 * so that a correction that takes the evidence away takes the alert away. SPEC WA1 to WA7.
 */
export const watchCourse = (
  view: MatchView,
  watch: FrozenWatch,
  attempts: readonly FigureAttempt[],
): WatchView => {
  const { side, rate } = watch;
  const doubt = doubtAfterPoints(view, side);
  const course = walk(view, watch, attempts, doubt);
  const now = thresholdsAt(watch, Math.max(1, course.cusum.attempts));
  const events = attempts.filter(({ event }) => event);
  const since = runOf(view, side, attempts, course.cusum);
  return {
    watch,
    side,
    rate,
    state: stateOf(course, now.amber),
    match: {
      x: events.length,
      n: attempts.length,
      offPlan: events.filter(({ offPlan }) => offPlan === true).length,
    },
    ...(since ? { since } : {}),
    strength: Math.min(1, course.cusum.c / now.red),
    isDoubtful: doubt.at(-1) ?? false,
    episodes: course.episodes,
    hits: idsOf(view, events),
    others: idsOf(
      view,
      attempts.filter(({ event }) => !event),
    ),
  };
};
