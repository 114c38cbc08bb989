import type { BallHeight, BallTime, OpponentPlace, Shot } from "@courtloom/match-log";
import type { Habits } from "./habits.ts";
import type { RallyStroke } from "./rally.ts";
import type { Random } from "./random.ts";

/** A chartist overlooks a question now and then; what was not answered is unknown. */
const OVERLOOKED = 0.05;
const SIDE_M = 1.37;
const SERVICE_LINE_M = 6.4;
/** Beyond the singles sideline a player has to reach. */
const REACHED_M = 4.3;
const BASELINE_M = 11.885;
/** How often a player behind the baseline is in no hurry. */
const SET_BEHIND = 0.8;
/** How often a player inside it has time for a ball that is kept, and the opponent is off the court behind one. */
const SET_WHEN_KEPT = 0.15;
const WIDE_WHEN_KEPT = 0.06;

const heightOf = (random: Random, { from, sitsUp }: RallyStroke): BallHeight => {
  if (sitsUp) return "sitsUp";
  if (from.y > -SERVICE_LINE_M) return random.chance(0.85) ? "low" : "netHigh";
  return random.chance(0.7) ? "netHigh" : random.chance(0.6) ? "jumps" : "low";
};

const isLine = ({ from, to }: RallyStroke): boolean =>
  Math.abs(from.x) >= SIDE_M && Math.sign(from.x) === Math.sign(to.x) && Math.abs(to.x) >= SIDE_M;

const timeOf = (random: Random, stroke: RallyStroke, habits: Habits): BallTime => {
  if (Math.abs(stroke.from.x) > REACHED_M) return "stretched";
  const inside = isLine(stroke) ? habits.lineWithTime : SET_WHEN_KEPT;
  return random.chance(stroke.from.y > -BASELINE_M ? inside : SET_BEHIND) ? "set" : "hurried";
};

/** Where the opponent is when the ball is struck: on the side from which they sent the one before, if off the court. */
const placeOf = (
  random: Random,
  stroke: RallyStroke,
  before: RallyStroke | undefined,
  habits: Habits,
): OpponentPlace => {
  if (before?.cameIn) return "net";
  if (!before || Math.abs(before.from.x) < SIDE_M) return "set";
  const wide = isLine(stroke) && !stroke.sitsUp ? habits.lineWhenWide : WIDE_WHEN_KEPT;
  if (!random.chance(wide)) return "set";
  // Who stands to the right of their own half stands to the left as the striker looks.
  return before.from.x > 0 ? "wideLeft" : "wideRight";
};

/**
 * What a chartist says of the ball that an own player's stroke answered: what the plan's rules ask. Each answer may be
 * absent. SPEC DM8.
 */
export const answersOf = (
  random: Random,
  stroke: RallyStroke,
  before: RallyStroke | undefined,
  habits: Habits,
): Pick<Shot, "ballHeight" | "ballTime" | "opponent"> => {
  const answered = <T extends object>(answer: T): T | object => (random.chance(OVERLOOKED) ? {} : answer);
  return {
    ...answered({ ballHeight: heightOf(random, stroke) }),
    ...answered({ ballTime: timeOf(random, stroke, habits) }),
    ...answered({ opponent: placeOf(random, stroke, before, habits) }),
  };
};
