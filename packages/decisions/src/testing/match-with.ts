import { type EntryBody, foldLog, type MatchOpened, type MatchView, type Point } from "@courtloom/match-log";
import { makeLog, openedWith, pointTo } from "@courtloom/match-log/testing";
import { STARTER_PLAN } from "../plan/starter-plan.ts";

const SERVE = { outcome: "firstIn", faults: 0 } as const;

export const key = (winner: "A" | "B", shots: Point["shots"], more: Partial<Point> = {}): EntryBody =>
  pointTo(winner, { level: "key", serve: SERVE, shots, ...more });

export const every = (winner: "A" | "B", shots: Point["shots"], more: Partial<Point> = {}): EntryBody =>
  pointTo(winner, { level: "every", serve: SERVE, shots, ...more });

/** A match in which A has the starter plan, unless told otherwise, after these entries. */
export const matchWith = (bodies: readonly EntryBody[], opened: Partial<MatchOpened> = {}): MatchView => {
  const plans = { A: { planId: "p", version: 1, rules: STARTER_PLAN }, B: null };
  const view = foldLog(makeLog(bodies, openedWith({ plans, ...opened })));
  if (!view.ok) throw new Error(view.error);
  return view.value;
};
