import type { Db } from "./open-db.ts";

/** A code, or a session with its code, as the rows hold it. Times in ms since 1970. */
export interface FoundCode {
  readonly academyId: string;
  readonly codeId: string;
  readonly kind: "court" | "wall";
  readonly dayId: string;
  readonly courtId: string | null;
  readonly expiresMs: number;
  readonly revokedMs: number | null;
}

export interface OfDay {
  readonly academyId: string;
  readonly dayId: string;
  readonly nowMs: number;
}

export const timeOf = (ms: number): string => new Date(ms).toISOString();

/** A time column as whole milliseconds. */
export const msOf = ({ sql }: Db, column: string) =>
  sql`round(extract(epoch from ${sql(column)}) * 1000)::float8`;

/** The columns of a `FoundCode`. */
export const foundColumns = (db: Db) => db.sql`
  academy_id as "academyId", code_id as "codeId", kind, day_id as "dayId", court_id as "courtId",
  ${msOf(db, "expires_at")} as "expiresMs", ${msOf(db, "revoked_at")} as "revokedMs"`;
