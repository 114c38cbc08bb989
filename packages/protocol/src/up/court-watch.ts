import type { LoggedEntry } from "@courtloom/match-log";
import { z } from "zod";
import { idField, posField, versionField } from "../field.ts";
import type { Refusal } from "../refusal.ts";

/** Subscribe to a match and read what comes after `after` (0 for all). Entries are redacted to what the reader may see. */
export interface CourtWatch {
  readonly v: number;
  readonly matchId: string;
  readonly after: number;
}

export const courtWatchShape = z.strictObject({
  v: versionField,
  matchId: idField,
  after: posField,
}) satisfies z.ZodType<CourtWatch>;

/** `entries` are dense from `after + 1`; `more` when there are further ones to read with `court.read`. */
export interface CourtPage {
  readonly ok: true;
  readonly incarnation: string;
  readonly head: number;
  readonly entries: readonly LoggedEntry[];
  readonly more: boolean;
}

export type CourtWatchReply = CourtPage | Refusal;
