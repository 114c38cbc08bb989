import type { ByPlayer } from "@courtloom/core";
import type { ViewedPoint } from "@courtloom/match-log";
import { type Hand, isChangeOfDirection } from "@courtloom/tennis";
import { NO_PLAN } from "../plan/judge-ball.ts";
import type { PlanReading } from "../plan/read-plan.ts";
import { type ReadShot, readShots } from "../read-shots.ts";
import type { Ball } from "./ball.ts";
import { rallyPhase } from "./rally-phase.ts";

/** The opponent's ball that this one answered, where every ball is charted. SPEC D9. */
const answered = (read: ReadShot, before: ReadShot | undefined): ReadShot | undefined =>
  before !== undefined && before.shot.striker !== read.shot.striker ? before : undefined;

const toBall = (
  viewed: ViewedPoint,
  read: ReadShot,
  place: number,
  before: ReadShot | undefined,
  plan: PlanReading | undefined,
): Ball => {
  const { shot, kind, contact, stroke, missed } = read;
  const isEvery = viewed.point.level === "every";
  const incoming = isEvery ? answered(read, before)?.stroke : undefined;
  const ball = {
    pointId: viewed.id,
    place,
    striker: shot.striker,
    level: viewed.point.level,
    kind,
    choice: shot.to === undefined ? "kept" : stroke?.direction,
    isChange: stroke && isChangeOfDirection(incoming, stroke),
    cameIn: shot.cameIn,
    hesitated: shot.hesitated,
    result: shot.result,
    missed,
    depth: contact.depthStruck,
    side: contact.channel,
    strokeSide: contact.strokeSide,
    ballHeight: shot.ballHeight,
    ballTime: shot.ballTime,
    opponent: shot.opponent,
    incoming: incoming && { direction: incoming.direction, landing: incoming.landing },
    // The serve is the first stroke; at key balls most of the others are not charted.
    phase: isEvery ? rallyPhase(place + 2) : undefined,
    judgement: NO_PLAN,
  } satisfies Ball;
  // Filled in here rather than copied: a fold reads every ball.
  if (plan) ball.judgement = plan.judge(ball);
  return ball;
};

/**
 * The counted balls of a point in order, of both players, every kind: none at score only, at key balls those of
 * the players charted then, at every ball all. What the net cord or a disputed call decided is left out, and
 * still answers and is answered. Without a plan read, a side's balls are judged as without a plan. SPEC D4, D10, D12.
 */
export const readBalls = (
  viewed: ViewedPoint,
  hands: ByPlayer<Hand>,
  plans?: ByPlayer<PlanReading | undefined>,
): readonly Ball[] => {
  const { level } = viewed.point;
  if (level === "score" || viewed.point.shots.length === 0) return [];
  const reads = readShots(viewed, hands);
  const balls: Ball[] = [];
  let before: ReadShot | undefined;
  for (let place = 0; place < reads.length; place += 1) {
    const read = reads[place];
    if (!read) continue;
    const { striker, leftOut } = read.shot;
    const isCharted = level === "every" || viewed.subjects.includes(striker);
    if (isCharted && leftOut === undefined) balls.push(toBall(viewed, read, place, before, plans?.[striker]));
    before = read;
  }
  return balls;
};
