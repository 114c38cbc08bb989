import { err, ok, type Result } from "@courtloom/core";
import { and, eq, isNull, max } from "drizzle-orm";
import type { NewMatch } from "../day-store.ts";
import { inAcademy, type Tx } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { match } from "../schema/match.ts";
import { matchRow, playersOf, readMatchContext } from "./insert-matches.ts";

/** Rule DB9. */
export async function addMatch(
  db: Db,
  added: NewMatch,
): Promise<
  Result<{ readonly matchId: string }, { readonly code: "unknown_day" | "unknown_court" | "unknown_player" }>
> {
  return inAcademy(db, added.academyId, async (tx) => {
    const context = await readMatchContext(tx, added.academyId, [added]);
    if (playersOf(added).some((id) => !context.ownOf.has(id))) return err({ code: "unknown_player" });
    const row = matchRow(added, context, await nextOrder(tx, added));
    if (!row) return err({ code: "unknown_day" });
    const courtIsOfDay = added.courtId === null || context.dayOfCourt.get(added.courtId) === added.dayId;
    if (!courtIsOfDay) return err({ code: "unknown_court" });
    await tx.orm.insert(match).values(row);
    return ok({ matchId: row.matchId });
  });
}

/** After the last match of its court; of the day's matches without a court; of no day: 1. */
async function nextOrder({ orm }: Tx, { academyId, dayId, courtId }: NewMatch): Promise<number> {
  if (dayId === null) return 1;
  const [row] = await orm
    .select({ last: max(match.orderNo) })
    .from(match)
    .where(
      and(
        eq(match.academyId, academyId),
        eq(match.dayId, dayId),
        courtId === null ? isNull(match.courtId) : eq(match.courtId, courtId),
      ),
    );
  return (row?.last ?? 0) + 1;
}
