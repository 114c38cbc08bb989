import { z } from "zod";
import { idField, versionField } from "../field.ts";
import type { Refusal } from "../refusal.ts";

/** Stop following a match (`court.leave`, its id) or a day (`board.leave`, its id). */
export interface Leave {
  readonly v: number;
  readonly id: string;
}

export const leaveShape = z.strictObject({ v: versionField, id: idField }) satisfies z.ZodType<Leave>;

export type LeaveReply = { readonly ok: true } | Refusal;
