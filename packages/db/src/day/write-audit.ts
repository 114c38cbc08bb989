import type { DayStore } from "../day-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";

/** Plain insert: the application's role may not read what it wrote. Rule DB15. */
export async function writeAudit(
  db: Db,
  { academyId, actor, action, subject, detail }: Parameters<DayStore["writeAudit"]>[0],
): Promise<void> {
  await inAcademy(db, academyId, async ({ sql }) => {
    await sql`
      insert into audit (academy_id, actor, action, subject, detail)
      values (${academyId}, ${actor}, ${action}, ${subject ?? null}, ${detail ? JSON.stringify(detail) : null}::json)`;
  });
}
