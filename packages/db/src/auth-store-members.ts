import { inAcademy } from "./in-academy.ts";
import type { Db } from "./open-db.ts";

interface MemberFound {
  readonly academyId: string;
  readonly memberId: string;
  readonly name: string;
  readonly role: "director" | "coach";
}

export const createAuthMembers = (db: Db) => ({
  membershipOf: async (userId: string): Promise<MemberFound | undefined> => {
    const [found] = await db.sql<MemberFound[]>`
      select academy_id as "academyId", member_id as "memberId", display_name as name, role
      from find_member(${userId}) limit 1`;
    return found && { ...found };
  },

  demoDirector: async (): Promise<{ academyId: string; userId: string } | undefined> => {
    const [demo] = await db.sql<{ academyId: string | null }[]>`select demo_academy() as "academyId"`;
    const academyId = demo?.academyId;
    if (!academyId) return undefined;
    const [director] = await inAcademy(
      db,
      academyId,
      ({ sql }) => sql<{ userId: string }[]>`
        select user_id as "userId" from member
        where academy_id = ${academyId} and role = 'director' and user_id is not null
        order by created_at, member_id limit 1`,
    );
    return director && { academyId, userId: director.userId };
  },

  hasDirector: async (): Promise<boolean> => {
    const [row] = await db.sql<{ found: boolean }[]>`select has_any_academy() as found`;
    return row?.found === true;
  },
});
