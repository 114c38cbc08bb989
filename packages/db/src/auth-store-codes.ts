import postgres from "postgres";
import { type FoundCode, foundColumns, msOf, type OfDay, timeOf } from "./auth-store-columns.ts";
import { inAcademy } from "./in-academy.ts";
import type { Db } from "./open-db.ts";

interface Code extends FoundCode {
  readonly codeHash: string;
  readonly codeSealed: string;
  readonly issuedBy: string;
  readonly issuedMs: number;
}

const HASH_TAKEN = "court_code_code_hash_key";

const isHashTaken = (error: unknown): boolean =>
  error instanceof postgres.PostgresError && error.constraint_name === HASH_TAKEN;

export const createAuthCodes = (db: Db) => {
  const found = foundColumns(db);
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
                 coalesce(created_by, '') as "issuedBy", ${msOf(db, "created_at")} as "issuedMs"
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
  };
};
