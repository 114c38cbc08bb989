import { and, desc, eq } from "drizzle-orm";
import type { ChoiceFitRow, FigureStore } from "../figure-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { choiceFit } from "../schema/choice-fit.ts";

export async function readChoiceFit(
  db: Db,
  { academyId, version }: Parameters<FigureStore["choiceFit"]>[0],
): Promise<ChoiceFitRow | undefined> {
  const which = version === undefined ? undefined : eq(choiceFit.version, version);
  return inAcademy(db, academyId, async ({ orm }) => {
    const [row] = await orm
      .select()
      .from(choiceFit)
      .where(and(eq(choiceFit.academyId, academyId), which))
      .orderBy(desc(choiceFit.version))
      .limit(1);
    return row && { version: row.version, fittedMs: row.fittedAt.getTime(), fit: row.fit };
  });
}

/** Rule DB72. */
export async function addChoiceFit(
  db: Db,
  { academyId, fit }: Parameters<FigureStore["addChoiceFit"]>[0],
): Promise<{ readonly version: number } | undefined> {
  return inAcademy(db, academyId, async ({ sql }) => {
    const [added] = await sql<{ version: number }[]>`
      insert into choice_fit (academy_id, version, fit)
      select ${academyId}, coalesce(max(version), 0) + 1, ${JSON.stringify(fit)}::text::json
      from choice_fit where academy_id = ${academyId}
      on conflict do nothing returning version`;
    return added && { version: added.version };
  });
}
