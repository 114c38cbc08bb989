import { CHARTING_LEVELS, type ChartingLevel, type LoggedEntry } from "@courtloom/match-log";
import { z } from "zod";
import { idField, versionField } from "../field.ts";
import type { Leader } from "../leader.ts";
import type { Refusal } from "../refusal.ts";

/** A phone starts or resumes its lane on a match. The same message again is harmless. */
export interface LaneOpen {
  readonly v: number;
  readonly matchId: string;
  /** Random UUID, kept on the device with the lane's entries. */
  readonly laneId: string;
  readonly level: ChartingLevel;
  /** A person asked to lead from now on, in place of the lane that leads. For a new lane only. */
  readonly takeOver?: true;
  /** A new lane that is kept beside the score, whoever leads; it never leads. */
  readonly second?: true;
}

export const laneOpenShape = z.strictObject({
  v: versionField,
  matchId: idField,
  laneId: idField,
  level: z.enum(CHARTING_LEVELS),
  takeOver: z.literal(true).exactOptional(),
  second: z.literal(true).exactOptional(),
}) satisfies z.ZodType<LaneOpen>;

/** What the phone needs to go on: where the server stands, and the opening without what a helper must not see. */
export interface LaneOpened {
  readonly ok: true;
  readonly incarnation: string;
  readonly epoch: number;
  /** The highest n of this lane on the server; 0 when new. */
  readonly cursor: number;
  /** Last pos of the match. */
  readonly head: number;
  readonly opening: LoggedEntry;
  readonly chartist: string;
  /** This lane makes the score. A lane that lost the lead still takes entries; they stand beside the score. */
  readonly leads: boolean;
  /** Who leads instead; absent while this lane leads, or while nobody does. */
  readonly leader?: Leader;
}

/** Another lane leads, and this one would be new. Ask again after `afterMs` to hear how that one fares. */
export interface LeadTakenRefusal extends Refusal {
  readonly code: "lead_taken";
  readonly leader: Leader;
}

export type LaneOpenReply = LaneOpened | LeadTakenRefusal | Refusal;
