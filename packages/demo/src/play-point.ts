import { type ByPlayer, otherSide, type Side } from "@courtloom/core";
import type { Point, Serve, Shot } from "@courtloom/match-log";
import { type EndSeen, seenFrom } from "@courtloom/tennis";
import { answersOf } from "./answers.ts";
import { SERVICE } from "./habits.ts";
import { playRally, type RallyPlayer, type RallyStroke } from "./rally.ts";
import type { Random } from "./random.ts";

export interface PointSetting {
  readonly server: Side;
  readonly fromRight: boolean;
  readonly endOfA: EndSeen;
  readonly players: ByPlayer<RallyPlayer>;
  /** Whose balls the chartist is asked about. */
  readonly asked: ByPlayer<boolean>;
  /** What the chartist answers is drawn from a stream of its own, so that it never moves the play. */
  readonly answers: Random;
}

/** How far a chartist's finger strays, in metres. */
const FINGER_M = 0.25;

const charted = (random: Random, stroke: RallyStroke, endOfA: EndSeen): Shot => {
  const smudge = (place: { x: number; y: number }) => ({
    x: place.x + random.bell() * FINGER_M,
    y: place.y + (stroke.miss === "net" ? 0 : random.bell() * FINGER_M),
  });
  const { from, to } = seenFrom(
    { from: smudge(stroke.from), to: smudge(stroke.to) },
    { seat: "behind", endOfA, striker: stroke.striker },
  );
  return {
    striker: stroke.striker,
    from,
    to,
    result: stroke.result,
    ...(stroke.miss ? { miss: stroke.miss } : {}),
    ...(stroke.cameIn === undefined ? {} : { cameIn: stroke.cameIn }),
  };
};

const playServe = (random: Random): Serve => {
  if (random.chance(SERVICE.firstIn)) {
    return random.chance(SERVICE.aceOfFirstIn)
      ? { outcome: "ace", faults: 0 }
      : { outcome: "firstIn", faults: 0 };
  }
  return random.chance(SERVICE.secondIn)
    ? { outcome: "secondIn", faults: 1 }
    : { outcome: "doubleFault", faults: 2 };
};

const winnerOf = (last: RallyStroke | undefined, server: Side): Side => {
  if (!last) return server;
  return last.result === "missed" ? otherSide(last.striker) : last.striker;
};

/** One point as a chartist at "every ball" would record it, from a seat behind an end. */
export const playPoint = (random: Random, setting: PointSetting): Point => {
  const { server, endOfA } = setting;
  const serve = playServe(random);
  const base = { level: "every", seat: "behind", endOfA, serve } as const;
  if (serve.outcome === "ace") return { ...base, winner: server, shots: [] };
  if (serve.outcome === "doubleFault") return { ...base, winner: otherSide(server), shots: [] };
  const first = serve.outcome === "firstIn";
  const strokes = playRally(random, setting.players, {
    server,
    fromRight: setting.fromRight,
    returnMiss: first ? SERVICE.returnMissFirst : SERVICE.returnMissSecond,
    helps: first ? SERVICE.firstHelps : 0,
  });
  return {
    ...base,
    winner: winnerOf(strokes[strokes.length - 1], server),
    shots: strokes.map((stroke, i) => ({
      ...charted(random, stroke, endOfA),
      ...(setting.asked[stroke.striker]
        ? answersOf(setting.answers, stroke, strokes[i - 1], setting.players[stroke.striker].habits)
        : {}),
    })),
  };
};
