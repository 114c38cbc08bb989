import { randomUUID } from "node:crypto";
import { err, ok, type Result } from "@courtloom/core";
import type { Academy, NewAcademy } from "../day-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { academy } from "../schema/academy.ts";

/** Rule DB7: the database itself makes sure that there is only one of each kind. */
export async function setupAcademy(
  db: Db,
  { academyId = randomUUID(), name, timeZone, language, isDemo, director }: NewAcademy,
): Promise<
  Result<{ readonly academyId: string; readonly memberId: string }, { readonly code: "already_set_up" }>
> {
  const memberId = randomUUID();
  const [row] = await db.sql<{ made: boolean }[]>`
    select create_academy(${academyId}, ${name}, ${timeZone}, ${language}, ${isDemo},
                          ${memberId}, ${director.displayName}, ${director.userId}) as made`;
  return row?.made ? ok({ academyId, memberId }) : err({ code: "already_set_up" });
}

export async function readAcademy(
  db: Db,
  { academyId }: { readonly academyId: string },
): Promise<Academy | undefined> {
  return inAcademy(db, academyId, async ({ orm }) => {
    const { name, timeZone, language, isDemo } = academy;
    const rows = await orm
      .select({ academyId: academy.academyId, name, timeZone, language, isDemo })
      .from(academy);
    return rows.find((row) => row.academyId === academyId);
  });
}
