import { and, asc, eq } from "drizzle-orm";
import type { BoardCourt, Court, DayBoard, MatchCard } from "../day-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { academy } from "../schema/academy.ts";
import { court, day } from "../schema/day.ts";
import { match } from "../schema/match.ts";
import { selectCards } from "./match-cards.ts";

export async function readDayBoard(
  db: Db,
  { academyId, dayId }: { readonly academyId: string; readonly dayId: string },
): Promise<DayBoard | undefined> {
  return inAcademy(db, academyId, async (tx) => {
    const [found, courts, cards] = await Promise.all([
      tx.orm
        .select({
          day: { dayId: day.dayId, name: day.name, date: day.date },
          academyName: academy.name,
          timeZone: academy.timeZone,
          language: academy.language,
        })
        .from(day)
        .innerJoin(academy, eq(academy.academyId, day.academyId))
        .where(and(eq(day.academyId, academyId), eq(day.dayId, dayId))),
      tx.orm
        .select({ courtId: court.courtId, no: court.no, name: court.name })
        .from(court)
        .where(and(eq(court.academyId, academyId), eq(court.dayId, dayId)))
        .orderBy(asc(court.no)),
      selectCards(tx, and(eq(match.academyId, academyId), eq(match.dayId, dayId))),
    ]);
    return found[0] && { ...found[0], courts: courts.map((one) => toBoardCourt(one, cards)) };
  });
}

/** `cards` come in order of play. Rule DB11. */
function toBoardCourt(one: Court, cards: readonly MatchCard[]): BoardCourt {
  const here = cards.filter(({ courtId }) => courtId === one.courtId);
  const open = here.filter(({ stage }) => stage === "open");
  open.sort((a, b) => (b.openedMs ?? 0) - (a.openedMs ?? 0));
  const waiting = here.filter(({ stage }) => stage === "waiting");
  const current = open[0] ?? waiting[0] ?? here.at(-1) ?? null;
  return { ...one, current, next: waiting.filter((card) => card !== current) };
}
