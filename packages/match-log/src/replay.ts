import { assert, type Side } from "@courtloom/core";
import { applyScore, type EndSeen, type ScoreBoard, turnEnds } from "@courtloom/tennis";
import type { Fact } from "./entry.ts";
import type { ChartingLevel } from "./point.ts";
import { scoreEventOf } from "./score-events.ts";
import type { TrailFact } from "./trail.ts";
import type { SetAside, SetAsideReason, ViewedPoint } from "./view.ts";

/** The part of a view that follows from the facts alone; mutable only inside the fold. */
export interface Progress {
  board: ScoreBoard;
  points: ViewedPoint[];
  setAside: SetAside[];
  level: ChartingLevel;
  subjects: readonly Side[];
  endOfA: EndSeen | undefined;
  suspended: boolean;
}

const turnedIf = (odd: boolean, end: EndSeen | undefined): EndSeen | undefined =>
  odd && end !== undefined ? turnEnds(end) : end;

/** Turns the points charted from `since` on, but none that was amended after the statement or seen by somebody else. SPEC L9. */
const turnSince = (progress: Progress, facts: ReadonlyMap<string, TrailFact>, since: string, pos: number) => {
  const first = progress.points.findIndex((p) => p.id === since);
  if (first < 0) return false;
  for (let i = first; i < progress.points.length; i += 1) {
    const viewed = progress.points[i];
    assert(viewed, "index within points");
    const fact = facts.get(viewed.id);
    if (fact?.from !== undefined || (fact?.saidAt ?? 0) > pos) continue;
    progress.points[i] = { ...viewed, point: { ...viewed.point, endOfA: turnEnds(viewed.point.endOfA) } };
  }
  return true;
};

/** Applies what only concerns the charting, not the score. Answers why it could not, if so. */
const applyCharting = (
  progress: Progress,
  { fact, pos }: TrailFact,
  facts: ReadonlyMap<string, TrailFact>,
): SetAsideReason | undefined => {
  switch (fact.kind) {
    case "LevelChanged":
      progress.level = fact.level;
      return undefined;
    case "SubjectsChanged":
      progress.subjects = fact.subjects;
      return undefined;
    case "PlaySuspended":
      progress.suspended = true;
      return undefined;
    case "PlayResumed":
      if (!progress.suspended) return "notSuspended";
      progress.suspended = false;
      return undefined;
    case "EndsStated":
      if (fact.since !== undefined && !turnSince(progress, facts, fact.since, pos)) return "unknownTarget";
      progress.endOfA = fact.endOfA;
      return undefined;
    default:
      return undefined;
  }
};

const scoreReason = (fact: Fact, over: boolean): SetAsideReason =>
  over && fact.kind !== "ScoreStated" ? "matchOver" : "impossibleScore";

/** Applies one fact in place. Total: a fact that the score cannot take is set aside and blocks nothing. SPEC L7. */
export const replayFact = (
  progress: Progress,
  trailFact: TrailFact,
  facts: ReadonlyMap<string, TrailFact>,
): void => {
  if (trailFact.voided) return;
  const { fact, id, pos, laneId, wallMs, from } = trailFact;
  const event = scoreEventOf(fact);
  if (!event) {
    const reason = applyCharting(progress, trailFact, facts);
    if (reason) progress.setAside.push({ pos, id, reason });
    return;
  }
  const before = progress.board.state;
  const applied = applyScore(progress.board, event);
  if (!applied.ok) {
    progress.setAside.push({ pos, id, reason: scoreReason(fact, before.over) });
    return;
  }
  progress.board = applied.value;
  const after = applied.value.state;
  const turned = (after.changesOfEnds - before.changesOfEnds) % 2 !== 0;
  if (fact.kind !== "PointCharted") {
    progress.endOfA = turnedIf(turned, progress.endOfA);
    return;
  }
  assert(before.server, "a match in play has a server");
  const { server } = before;
  const { subjects } = progress;
  progress.points.push({ id, pos, laneId, wallMs, point: fact.point, before, after, server, subjects });
  progress.suspended = false;
  if (from === undefined) progress.level = fact.point.level;
  // What was taken from somebody else's lane was seen from their seat; the lead's ends go on by the score.
  progress.endOfA = turnedIf(turned, from === undefined ? fact.point.endOfA : progress.endOfA);
};
