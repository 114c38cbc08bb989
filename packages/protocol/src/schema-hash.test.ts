import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { entryShape } from "./entry-shape.ts";
import { DOWN, UP } from "./events.ts";
import { REFUSALS } from "./refusal.ts";
import { alertMarkShape } from "./up/alert-mark.ts";
import { alertsWatchShape } from "./up/alerts-watch.ts";
import { boardWatchShape } from "./up/board-watch.ts";
import { courtReadShape } from "./up/court-read.ts";
import { courtWatchShape } from "./up/court-watch.ts";
import { laneAppendShape } from "./up/lane-append.ts";
import { laneBeatShape } from "./up/lane-beat.ts";
import { laneOpenShape } from "./up/lane-open.ts";
import { leaveShape } from "./up/leave.ts";
import { OLDEST_PROTOCOL_VERSION, PROTOCOL_VERSION } from "./version.ts";

const SHAPES = {
  [UP.laneOpen]: laneOpenShape,
  [UP.laneAppend]: laneAppendShape,
  [UP.laneBeat]: laneBeatShape,
  [UP.courtWatch]: courtWatchShape,
  [UP.courtRead]: courtReadShape,
  [UP.courtLeave]: leaveShape,
  [UP.boardWatch]: boardWatchShape,
  [UP.boardLeave]: leaveShape,
  [UP.alertsWatch]: alertsWatchShape,
  [UP.alertsLeave]: leaveShape,
  [UP.alertMark]: alertMarkShape,
} satisfies Record<(typeof UP)[keyof typeof UP], z.ZodObject>;

/** Without the version, whose bounds move by themselves. */
const schemaOf = (shape: z.ZodObject) => {
  const { v: _, ...members } = shape.shape;
  return z.toJSONSchema(z.strictObject(members));
};

/** Everything that both sides have to agree on. */
const wire = (): string =>
  JSON.stringify({
    up: UP,
    down: DOWN,
    refusals: REFUSALS,
    entry: z.toJSONSchema(entryShape),
    shapes: Object.entries(SHAPES).map(([event, shape]) => [event, schemaOf(shape)]),
  });

/**
 * One line per version, never edited. When this test fails, the messages have changed: raise
 * PROTOCOL_VERSION, write the new version into its history, and add the new hash here.
 */
const HASHES: Readonly<Record<number, string>> = {
  1: "54fb55df0045806f",
  2: "d845e7e86100489f",
};

describe("the version of the messages", () => {
  it("[PR2] is raised whenever a message changes", () => {
    const hash = createHash("sha256").update(wire()).digest("hex").slice(0, 16);
    expect({ version: PROTOCOL_VERSION, hash }).toEqual({
      version: PROTOCOL_VERSION,
      hash: HASHES[PROTOCOL_VERSION],
    });
  });

  it("[PR2] has a hash for every version so far, and the server understands the one before", () => {
    const versions = Object.keys(HASHES).map(Number);
    expect(versions).toEqual(Array.from({ length: PROTOCOL_VERSION }, (_, i) => i + 1));
    expect(new Set(Object.values(HASHES)).size).toBe(versions.length);
    expect(OLDEST_PROTOCOL_VERSION).toBe(Math.max(1, PROTOCOL_VERSION - 1));
  });
});
