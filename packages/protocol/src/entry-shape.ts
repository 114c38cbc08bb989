import { err, ok, type Result, SIDES } from "@courtloom/core";
import {
  BALL_HEIGHTS,
  BALL_TIMES,
  CHARTING_LEVELS,
  type Entry,
  MISSES,
  OPPONENT_PLACES,
  SERVE_OUTCOMES,
  SET_ASIDE_REASONS,
  SHOT_KINDS,
  SHOT_RESULTS,
} from "@courtloom/match-log";
import { z } from "zod";
import { idField, wallField } from "./field.ts";

const side = z.enum(SIDES);
const end = z.enum(["near", "far", "left", "right"]);
const uuid = z.string().regex(/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/);
/** Thirty metres to every side of the net's middle is far beyond any fence. */
const centimetres = z.number().int().min(-3000).max(3000);
const seenPoint = z.strictObject({ right: centimetres, away: centimetres });

const shot = z.strictObject({
  striker: side,
  from: seenPoint,
  to: seenPoint.optional(),
  kind: z.enum(SHOT_KINDS).optional(),
  result: z.enum(SHOT_RESULTS).optional(),
  miss: z.enum(MISSES).optional(),
  missForced: z.boolean().optional(),
  ballHeight: z.enum(BALL_HEIGHTS).optional(),
  ballTime: z.enum(BALL_TIMES).optional(),
  opponent: z.enum(OPPONENT_PLACES).optional(),
  cameIn: z.boolean().optional(),
  hesitated: z.boolean().optional(),
  leftOut: z.enum(SET_ASIDE_REASONS).optional(),
});

const point = z.strictObject({
  winner: side,
  level: z.enum(CHARTING_LEVELS),
  seat: z.enum(["behind", "side"]),
  endOfA: end,
  serve: z
    .strictObject({
      outcome: z.enum(SERVE_OUTCOMES),
      faults: z.union([z.literal(0), z.literal(1), z.literal(2)]),
      lets: z.number().int().min(0).max(20).optional(),
    })
    .optional(),
  shots: z.array(shot).max(120),
  satUpKept: z.number().int().min(0).max(99).optional(),
});

const count = z.number().int().min(0).max(999);
const pair = z.tuple([count, count]);
const timePolicy = z.strictObject({
  unfinishedGame: z.enum(["ignored", "leaderGetsIt", "needsLeadOfTwo", "decidingPoint"]),
  drawAllowed: z.boolean().optional(),
  gamesCounted: z.enum(["set", "match"]).optional(),
  pointsDecide: z.boolean().optional(),
});

const fact = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("PointCharted"), point }),
  z.strictObject({ kind: z.literal("PointReplayed") }),
  z.strictObject({
    kind: z.literal("PenaltyGiven"),
    penalty: z.enum(["warning", "point", "game"]),
    against: side,
  }),
  z.strictObject({
    kind: z.literal("ScoreStated"),
    score: z.strictObject({
      sets: z
        .array(z.union([pair, z.tuple([count, count, z.union([count, z.literal("MTB")])])]))
        .max(5)
        .optional(),
      games: pair.optional(),
      points: pair.optional(),
      server: side.optional(),
    }),
    missed: z.boolean(),
  }),
  z.strictObject({ kind: z.literal("ServerStated"), to: side, slip: z.enum(["players", "chartist"]) }),
  z.strictObject({ kind: z.literal("EndsStated"), endOfA: end, since: idField.optional() }),
  z.strictObject({ kind: z.literal("LevelChanged"), level: z.enum(CHARTING_LEVELS) }),
  z.strictObject({ kind: z.literal("SubjectsChanged"), subjects: z.array(side).max(2) }),
  z.strictObject({
    kind: z.literal("PlaySuspended"),
    reason: z.enum(["rain", "light", "heat", "medical", "other"]),
  }),
  z.strictObject({ kind: z.literal("PlayResumed") }),
  z.strictObject({
    kind: z.literal("MatchEnded"),
    how: z.discriminatedUnion("type", [
      z.strictObject({ type: z.literal("retired"), side }),
      z.strictObject({ type: z.literal("defaulted"), side }),
      z.strictObject({ type: z.literal("walkover"), absent: side }),
      z.strictObject({ type: z.literal("unplayed") }),
      z.strictObject({ type: z.literal("timeUp"), policy: timePolicy }),
    ]),
  }),
]);

/** What a phone may write: facts and corrections. Opening, taking over and sealing are the desk's. */
const laneBody = z.union([
  fact,
  z.strictObject({ kind: z.literal("EntryAmended"), target: uuid, to: fact, from: uuid.optional() }),
  z.strictObject({
    kind: z.literal("EntryInserted"),
    before: uuid.optional(),
    fact,
    from: uuid.optional(),
  }),
  z.strictObject({ kind: z.literal("EntryVoided"), target: uuid }),
  z.strictObject({ kind: z.literal("EntryRestored"), target: uuid }),
]);

/** An entry on the wire, version 1. */
export const entryShape = z.strictObject({
  v: z.literal(1),
  id: uuid,
  n: z.number().int().min(1).max(1_000_000),
  atMs: z.number().int().min(0).max(8_640_000_000_000_000),
  wallMs: wallField,
  body: laneBody,
});

/** Reads an entry that came over the wire. A newer client's unknown members are refused, not dropped. */
export const parseEntry = (raw: unknown): Result<Entry, "bad_shape"> => {
  const parsed = entryShape.safeParse(raw);
  return parsed.success ? ok(parsed.data as Entry) : err("bad_shape");
};
