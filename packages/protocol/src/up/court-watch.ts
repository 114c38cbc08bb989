import type { LoggedEntry } from "@courtloom/match-log";
import { z } from "zod";
import { idField, posField, versionField } from "../field.ts";
import type { Refusal } from "../refusal.ts";

/**
 * Subscribe to a match and read what comes after `after` (0 for all). Entries are redacted to what may arrive on the
 * screen that reads them.
 */
export interface CourtWatch {
  readonly v: number;
  readonly matchId: string;
  readonly after: number;
  /** The court's page. Absent: a pad, which may hold less whoever is behind it. */
  readonly screen?: "court";
}

export const courtWatchShape = z.strictObject({
  v: versionField,
  matchId: idField,
  after: posField,
  screen: z.literal("court").exactOptional(),
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
