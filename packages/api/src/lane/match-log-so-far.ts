import type { LoggedEntry } from "@courtloom/match-log";
import { failure } from "../errors/failure.ts";
import type { StaffContext } from "../procedure.ts";

const PAGE = 500;

/** All of a match's log; empty while it waits. */
export const matchLogSoFar = async (
  { log, staff }: StaffContext,
  matchId: string,
): Promise<readonly LoggedEntry[]> => {
  const entries: LoggedEntry[] = [];
  for (;;) {
    const page = await log.read({ academyId: staff.academyId, matchId, after: entries.length, limit: PAGE });
    if (!page.ok) throw failure(page.error.code);
    entries.push(...page.value.entries);
    if (page.value.entries.length < PAGE) return entries;
  }
};
