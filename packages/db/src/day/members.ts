import type { Member, NewMember } from "../day-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { member } from "../schema/academy.ts";

/** Adds a member once; one who is there already stays as they are. */
export async function addMember(db: Db, added: NewMember): Promise<void> {
  await inAcademy(db, added.academyId, async ({ orm }) => {
    await orm.insert(member).values(added).onConflictDoNothing();
  });
}

export async function listMembers(
  db: Db,
  { academyId }: { readonly academyId: string },
): Promise<readonly Member[]> {
  return inAcademy(db, academyId, async ({ orm }) => {
    const { memberId, role, displayName } = member;
    const rows = await orm.select({ memberId, role, displayName }).from(member).orderBy(displayName);
    return rows.map((row) => ({ ...row, role: row.role === "director" ? "director" : "coach" }));
  });
}
