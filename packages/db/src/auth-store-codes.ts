import postgres from "postgres";
import { inAcademy } from "./in-academy.ts";
import type { Db } from "./open-db.ts";

type CodeKind = "court" | "wall";

interface FoundCode {
  readonly academyId: string;
  readonly codeId: string;
  readonly kind: CodeKind;
  readonly dayId: string;
  readonly courtId: string | null;
  readonly expiresMs: number;
  readonly revokedMs: number | null;
}

interface Code extends FoundCode {
  readonly codeHash: string;
  readonly codeSealed: string;
  readonly issuedBy: string;
  readonly issuedMs: number;
}

interface FoundCourtside extends FoundCode {
  readonly sessionId: string;
  readonly name: string;
}

interface ListedCourtside extends FoundCourtside {
  readonly openedMs: number;
}

interface NewCourtside {
  readonly sessionId: string;
  readonly academyId: string;
  readonly codeId: string;
  readonly tokenHash: string;
  readonly name: string;
  readonly openedMs: number;
  readonly expiresMs: number;
}

interface OfDay {
  readonly academyId: string;
  readonly dayId: string;
  readonly nowMs: number;
}

const timeOf = (ms: number): string => new Date(ms).toISOString();

const HASH_TAKEN = "court_code_code_hash_key";

const isHashTaken = (error: unknown): boolean =>
  error instanceof postgres.PostgresError && error.constraint_name === HASH_TAKEN;

export const createAuthCodes = (db: Db) => {
  const ms = (column: postgres.PendingQuery<postgres.Row[]>) =>
    db.sql`round(extract(epoch from ${column}) * 1000)::float8`;

  const found = db.sql`
    academy_id as "academyId", code_id as "codeId", kind, day_id as "dayId", court_id as "courtId",
    ${ms(db.sql`expires_at`)} as "expiresMs", ${ms(db.sql`revoked_at`)} as "revokedMs"`;

  return {
    addCode: async (code: Code): Promise<boolean> => {
      try {
        await inAcademy(
          db,
          code.academyId,
          ({ sql }) => sql`
            insert into court_code (academy_id, code_id, code_hash, code_sealed, kind, day_id, court_id,
                                    created_by, created_at, expires_at)
            values (${code.academyId}, ${code.codeId}, ${code.codeHash}, ${code.codeSealed}, ${code.kind},
                    ${code.dayId}, ${code.courtId}, ${code.issuedBy}, ${timeOf(code.issuedMs)},
                    ${timeOf(code.expiresMs)})`,
        );
        return true;
      } catch (error) {
        if (isHashTaken(error)) return false;
        throw error;
      }
    },

    activeCodes: ({ academyId, dayId, nowMs }: OfDay): Promise<readonly Code[]> =>
      inAcademy(db, academyId, async ({ sql }) => [
        ...(await sql<Code[]>`
          select ${found}, code_hash as "codeHash", code_sealed as "codeSealed",
                 coalesce(created_by, '') as "issuedBy", ${ms(sql`created_at`)} as "issuedMs"
          from court_code
          where academy_id = ${academyId} and day_id = ${dayId}
            and revoked_at is null and expires_at > ${timeOf(nowMs)}
          order by created_at, code_id`),
      ]),

    revokeCode: async (code: { academyId: string; codeId: string; atMs: number }): Promise<boolean> => {
      const changed = await inAcademy(
        db,
        code.academyId,
        ({ sql }) => sql`
          update court_code set revoked_at = coalesce(revoked_at, ${timeOf(code.atMs)})
          where academy_id = ${code.academyId} and code_id = ${code.codeId}`,
      );
      return changed.count > 0;
    },

    findCode: async (codeHash: string): Promise<FoundCode | undefined> => {
      const [row] = await db.sql<FoundCode[]>`select ${found} from find_code(${codeHash})`;
      return row && { ...row };
    },

    openCourtside: async (session: NewCourtside): Promise<void> => {
      await inAcademy(
        db,
        session.academyId,
        ({ sql }) => sql`
          insert into courtside_session (academy_id, session_id, token_hash, code_id, name, created_at, expires_at)
          values (${session.academyId}, ${session.sessionId}, ${session.tokenHash}, ${session.codeId},
                  ${session.name}, ${timeOf(session.openedMs)}, ${timeOf(session.expiresMs)})`,
      );
    },

    findCourtside: async (tokenHash: string): Promise<FoundCourtside | undefined> => {
      const [row] = await db.sql<FoundCourtside[]>`
        select ${found}, session_id as "sessionId", name from find_courtside_session(${tokenHash})`;
      return row && { ...row };
    },

    activeCourtside: ({ academyId, dayId, nowMs }: OfDay): Promise<readonly ListedCourtside[]> =>
      inAcademy(db, academyId, async ({ sql }) => [
        ...(await sql<ListedCourtside[]>`
          select ${found}, session_id as "sessionId", name, ${ms(sql`opened_at`)} as "openedMs"
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
