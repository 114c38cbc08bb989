import { type MatchView, type PlaySuspended, timelineOf } from "@courtloom/match-log";

export interface Suspension {
  readonly reason: PlaySuspended["reason"];
  /** The phone's own time of day, with the day where it is another one than today: "14:05", "Tue 19:40". */
  readonly since: string;
}

/** Why and since when play is suspended; undefined when it is not. `nowMs` is the device's wall clock. */
export const suspendedSince = (view: MatchView, nowMs: number): Suspension | undefined => {
  if (!view.suspended) return undefined;
  const last = timelineOf(view).findLast(({ fact, voided }) => fact.kind === "PlaySuspended" && !voided);
  if (last?.fact.kind !== "PlaySuspended") return undefined;
  const [at, now] = [new Date(last.wallMs), new Date(nowMs)];
  const isToday = at.toDateString() === now.toDateString();
  const since = at.toLocaleTimeString("en-GB", {
    hour: "2-digit",
    minute: "2-digit",
    ...(isToday ? {} : { weekday: "short" }),
  });
  return { reason: last.fact.reason, since };
};
