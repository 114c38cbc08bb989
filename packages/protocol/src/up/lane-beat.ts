import { z } from "zod";
import { idField, versionField, wallField } from "../field.ts";
import type { Refusal } from "../refusal.ts";

/** "I am here": sent every `BEAT_EVERY_MS` while the pad is open. */
export interface LaneBeat {
  readonly v: number;
  readonly matchId: string;
  readonly laneId: string;
  /** Entries on the phone that the server has not acknowledged. */
  readonly unsent: number;
  readonly wallMs: number;
}

export const laneBeatShape = z.strictObject({
  v: versionField,
  matchId: idField,
  laneId: idField,
  unsent: z.number().int().min(0).max(100_000),
  wallMs: wallField,
}) satisfies z.ZodType<LaneBeat>;

/** Who charts, or charted, in a lane. */
export interface LaneChartist {
  readonly laneId: string;
  readonly chartist: string;
}

/**
 * `leads` is false once somebody took over; opening the lane again tells who. `others`: who wrote the match's
 * other lanes, as far as known; absent when nobody did.
 */
export type LaneBeatReply =
  | {
      readonly ok: true;
      readonly serverMs: number;
      readonly leads: boolean;
      readonly others?: readonly LaneChartist[];
    }
  | Refusal;
