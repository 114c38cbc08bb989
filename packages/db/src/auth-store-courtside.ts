import type postgres from "postgres";
import { type FoundCode, foundColumns, msOf, type OfDay, timeOf } from "./auth-store-columns.ts";
import { inAcademy } from "./in-academy.ts";
import type { Db } from "./open-db.ts";

interface FoundCourtside extends FoundCode {
  readonly sessionId: string;
  readonly name: string;
}

interface ListedCourtside extends FoundCourtside {
  readonly openedMs: number;
}

export interface NewCourtside {
  readonly sessionId: string;
  readonly academyId: string;
  readonly codeId: string;
  readonly tokenHash: string;
  readonly name: string;
  readonly openedMs: number;
  readonly expiresMs: number;
}

export const insertCourtside = (sql: postgres.TransactionSql, session: NewCourtside) => sql`
  insert into courtside_session (academy_id, session_id, token_hash, code_id, name, created_at, expires_at)
  values (${session.academyId}, ${session.sessionId}, ${session.tokenHash}, ${session.codeId},
          ${session.name}, ${timeOf(session.openedMs)}, ${timeOf(session.expiresMs)})`;

export const createAuthCourtside = (db: Db) => {
  const found = foundColumns(db);
  return {
    openCourtside: async (session: NewCourtside): Promise<void> => {
      await inAcademy(db, session.academyId, ({ sql }) => insertCourtside(sql, session));
    },

    findCourtside: async (tokenHash: string): Promise<FoundCourtside | undefined> => {
      const [row] = await db.sql<FoundCourtside[]>`
        select ${found}, session_id as "sessionId", name from find_courtside_session(${tokenHash})`;
      return row && { ...row };
    },

    activeCourtside: ({ academyId, dayId, nowMs }: OfDay): Promise<readonly ListedCourtside[]> =>
      inAcademy(db, academyId, async ({ sql }) => [
        ...(await sql<ListedCourtside[]>`
          select ${found}, session_id as "sessionId", name, ${msOf(db, "opened_at")} as "openedMs"
          from (
            select s.academy_id, s.session_id, s.name, s.created_at as opened_at, s.code_id,
                   c.kind, c.day_id, c.court_id, least(s.expires_at, c.expires_at) as expires_at,
                   coalesce(s.revoked_at, c.revoked_at) as revoked_at
            from courtside_session s
            join court_code c on c.academy_id = s.academy_id and c.code_id = s.code_id
            where s.academy_id = ${academyId} and c.day_id = ${dayId}
          ) as of_day
          where revoked_at is null and expires_at > ${timeOf(nowMs)}
          order by opened_at, session_id`),
      ]),

    revokeCourtside: async (session: {
      academyId: string;
      sessionId: string;
      atMs: number;
    }): Promise<boolean> => {
      const changed = await inAcademy(
        db,
        session.academyId,
        ({ sql }) => sql`
          update courtside_session set revoked_at = coalesce(revoked_at, ${timeOf(session.atMs)})
          where academy_id = ${session.academyId} and session_id = ${session.sessionId}`,
      );
      return changed.count > 0;
    },
  };
};
