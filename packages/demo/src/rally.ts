import { type ByPlayer, otherSide, type Side } from "@courtloom/core";
import type { Miss, ShotResult } from "@courtloom/match-log";
import type { Habits } from "./habits.ts";
import type { Random } from "./random.ts";

/** A place in metres as its striker sees it: x to the right, y = 0 at the net, own half negative. */
interface Place {
  readonly x: number;
  readonly y: number;
}

/** A stroke of the simulated rally, striker-relative. */
export interface RallyStroke {
  readonly striker: Side;
  readonly from: Place;
  readonly to: Place;
  /** Whether the ball that it answered sat up. */
  readonly sitsUp: boolean;
  readonly result: ShotResult;
  readonly miss?: Miss;
  readonly cameIn?: boolean;
}

export interface RallyPlayer {
  readonly habits: Habits;
  /** Added to the chance of missing: negative for the stronger player. */
  readonly missMore: number;
}

type Aim = "line" | "cross" | "middle";

const SIDE_AIM_M = 2.74;
const SERVICE_LINE_M = 6.4;
const SIDE_FROM_M = 1.37;
const MAX_STROKES = 60;

const clamp = (value: number, low: number, high: number): number => Math.max(low, Math.min(high, value));

const chooseAim = (random: Random, habits: Habits, from: Place, sitsUp: boolean): Aim => {
  if (Math.abs(from.x) < SIDE_FROM_M) return random.chance(0.45) ? "middle" : "cross";
  if (random.chance(sitsUp ? habits.lineSitsUp : habits.lineOrdinary)) return "line";
  return random.chance(0.22) ? "middle" : "cross";
};

const aimX = (random: Random, aim: Aim, from: Place): number => {
  if (aim === "middle") return random.bell() * 0.4;
  const own = from.x >= 0 ? 1 : -1;
  return (aim === "line" ? own : -own) * (SIDE_AIM_M + random.bell() * 0.3);
};

const landing = (random: Random, x: number): Place => ({
  x: clamp(x, -4, 4),
  y: random.chance(0.2) ? 3.2 + random.unit() * 2.8 : clamp(9 + random.bell() * 0.9, 6.6, 11.4),
});

const missed = (random: Random, from: Place, x: number): { to: Place; miss: Miss } => {
  const where = random.unit();
  if (where < 0.4) {
    const share = -from.y / (9 - from.y);
    return { to: { x: from.x + (x - from.x) * share, y: -0.3 }, miss: "net" };
  }
  if (where < 0.75 || Math.abs(x) < SIDE_FROM_M) return { to: { x, y: 12.9 + random.unit() }, miss: "long" };
  return { to: { x: Math.sign(x) * (5.2 + random.unit() * 0.5), y: 8.5 + random.bell() }, miss: "wide" };
};

const missChance = (player: RallyPlayer, aim: Aim, sitsUp: boolean, helped: number): number => {
  const { habits } = player;
  const line = sitsUp ? habits.lineMissSitsUp : habits.lineMissOrdinary;
  return clamp((aim === "line" ? line : habits.keptMiss) + player.missMore - helped, 0.02, 0.8);
};

const winnerChance = (aim: Aim, sitsUp: boolean): number => {
  if (aim === "line") return sitsUp ? 0.3 : 0.16;
  return sitsUp ? 0.16 : 0.06;
};

interface Incoming {
  readonly from: Place;
  readonly sitsUp: boolean;
  /** What the serve still does for this striker, or against, as a change of the chance to miss. */
  readonly helped: number;
}

const playStroke = (random: Random, striker: Side, player: RallyPlayer, ball: Incoming): RallyStroke => {
  const { from, sitsUp, helped } = ball;
  const aim = chooseAim(random, player.habits, from, sitsUp);
  const x = aimX(random, aim, from);
  const short = from.y > -SERVICE_LINE_M;
  const cameIn = short ? { cameIn: random.chance(player.habits.comesIn) } : {};
  if (random.chance(missChance(player, aim, sitsUp, helped))) {
    return { striker, from, ...missed(random, from, x), sitsUp, result: "missed", ...cameIn };
  }
  const result = random.chance(winnerChance(aim, sitsUp)) ? "winner" : "in";
  return { striker, from, to: landing(random, x), sitsUp, result, ...cameIn };
};

/** Where the next striker meets a ball that landed at `to`, in the next striker's own terms. */
const meet = (random: Random, to: Place): { from: Place; sitsUp: boolean } => {
  const short = to.y < SERVICE_LINE_M;
  const onward = short ? 0.6 : 2.6;
  return {
    from: { x: clamp(-to.x * 1.12 + random.bell() * 0.2, -5, 5), y: -(to.y + onward + random.unit() * 0.6) },
    sitsUp: short ? random.chance(0.6) : random.chance(0.06),
  };
};

/**
 * The strokes after a serve that was in: from the return to the stroke that ended the point.
 * `returnMiss` is the chance that the return is missed; `right` says from which half was served.
 */
export const playRally = (
  random: Random,
  players: ByPlayer<RallyPlayer>,
  serve: {
    readonly server: Side;
    readonly fromRight: boolean;
    readonly returnMiss: number;
    readonly helps: number;
  },
): RallyStroke[] => {
  const receiver = otherSide(serve.server);
  const half = serve.fromRight ? 1 : -1;
  const from = { x: half * (2 + random.unit() * 2.2), y: -(11.6 + random.unit() * 1.2) };
  if (random.chance(clamp(serve.returnMiss + players[receiver].missMore, 0.02, 0.6))) {
    const x = random.chance(0.6) ? -half * SIDE_AIM_M : 0;
    return [{ striker: receiver, from, ...missed(random, from, x), sitsUp: false, result: "missed" }];
  }
  const aim = random.chance(0.5) ? -half * SIDE_AIM_M : random.bell() * 0.5;
  const strokes: RallyStroke[] = [
    { striker: receiver, from, to: landing(random, aim), sitsUp: false, result: "in" },
  ];
  let striker = serve.server;
  while (strokes.length < MAX_STROKES) {
    const last = strokes[strokes.length - 1];
    if (last?.result !== "in") break;
    const helped = strokes.length <= 1 ? serve.helps : 0;
    strokes.push(playStroke(random, striker, players[striker], { ...meet(random, last.to), helped }));
    striker = otherSide(striker);
  }
  return strokes;
};
