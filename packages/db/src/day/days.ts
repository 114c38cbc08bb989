import { randomUUID } from "node:crypto";
import { desc, eq } from "drizzle-orm";
import type { Day, NewDay } from "../day-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { court, day } from "../schema/day.ts";

export async function listDays(
  db: Db,
  { academyId }: { readonly academyId: string },
): Promise<readonly Day[]> {
  return inAcademy(db, academyId, ({ orm }) =>
    orm
      .select({ dayId: day.dayId, name: day.name, date: day.date })
      .from(day)
      .where(eq(day.academyId, academyId))
      .orderBy(desc(day.date), desc(day.createdAt)),
  );
}

export async function createDay(
  db: Db,
  { academyId, dayId = randomUUID(), name, date, surface, courts }: NewDay,
): Promise<{ readonly dayId: string; readonly courtIds: readonly string[] }> {
  const rows = courts.map((made, i) => ({
    academyId,
    dayId,
    courtId: made.courtId ?? randomUUID(),
    no: i + 1,
    name: made.name,
  }));
  await inAcademy(db, academyId, async ({ orm }) => {
    await orm.insert(day).values({ academyId, dayId, name, date, surface: surface ?? null });
    if (rows.length > 0) await orm.insert(court).values(rows);
  });
  return { dayId, courtIds: rows.map(({ courtId }) => courtId) };
}
