import { err, ok, type Result } from "@courtloom/core";
import { and, eq } from "drizzle-orm";
import type { MatchCard, MatchChange } from "../day-store.ts";
import { inAcademy, type Tx } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { court } from "../schema/day.ts";
import { match } from "../schema/match.ts";
import { selectCards } from "./match-cards.ts";

interface Change {
  readonly academyId: string;
  readonly matchId: string;
  readonly change: MatchChange;
}

/** What the opening froze stays as it was. Rule DB12. */
export async function changeMatch(
  db: Db,
  { academyId, matchId, change }: Change,
): Promise<Result<MatchCard, { readonly code: "unknown_match" | "unknown_court" | "already_opened" }>> {
  const here = and(eq(match.academyId, academyId), eq(match.matchId, matchId));
  return inAcademy(db, academyId, async (tx) => {
    // Locked, so that a chartist opening it in this moment waits or comes first.
    const [row] = await tx.orm.select().from(match).where(here).for("update");
    if (!row) return err({ code: "unknown_match" });
    if (row.openedAt && touchesFrozen(change)) return err({ code: "already_opened" });
    if (change.courtId && !(await isCourtOfDay(tx, academyId, change.courtId, row.dayId))) {
      return err({ code: "unknown_court" });
    }
    const set = toSet(change);
    if (Object.keys(set).length > 0) await tx.orm.update(match).set(set).where(here);
    const [card] = await selectCards(tx, here);
    return card ? ok(card) : err({ code: "unknown_match" });
  });
}

/** Who may see what is the desk's to say at any time; the opening only remembers what it was. */
const touchesFrozen = ({ format, firstServer, subjects }: MatchChange): boolean =>
  [format, firstServer, subjects].some((value) => value !== undefined);

const toSet = ({ format, subjects, ...rest }: MatchChange): Partial<typeof match.$inferInsert> => ({
  ...Object.fromEntries(Object.entries(rest).filter(([, value]) => value !== undefined)),
  ...(format ? { matchFormat: format } : {}),
  ...(subjects ? { subjects: [...subjects] } : {}),
});

async function isCourtOfDay(
  { orm }: Tx,
  academyId: string,
  courtId: string,
  dayId: string | null,
): Promise<boolean> {
  const [found] = await orm
    .select()
    .from(court)
    .where(and(eq(court.academyId, academyId), eq(court.courtId, courtId)));
  return found !== undefined && found.dayId === dayId;
}

export async function setMatchOver(
  db: Db,
  {
    academyId,
    matchId,
    over,
  }: { readonly academyId: string; readonly matchId: string; readonly over: boolean },
): Promise<void> {
  await inAcademy(db, academyId, async ({ sql }) => {
    await sql`
      update match set over_at = case when ${over} then coalesce(over_at, now()) end
      where academy_id = ${academyId} and match_id = ${matchId}`;
  });
}
