import { pgTable, primaryKey, text, timestamp } from "drizzle-orm/pg-core";

export const courtCode = pgTable(
  "court_code",
  {
    academyId: text("academy_id").notNull(),
    codeId: text("code_id").notNull(),
    codeHash: text("code_hash").notNull(),
    kind: text("kind", { enum: ["court", "wall"] }).notNull(),
    dayId: text("day_id").notNull(),
    courtId: text("court_id"),
    createdBy: text("created_by"),
    createdAt: timestamp("created_at", { withTimezone: true }).notNull().defaultNow(),
    expiresAt: timestamp("expires_at", { withTimezone: true }).notNull(),
    revokedAt: timestamp("revoked_at", { withTimezone: true }),
    codeSealed: text("code_sealed").notNull(),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.codeId] })],
);

export const courtsideSession = pgTable(
  "courtside_session",
  {
    academyId: text("academy_id").notNull(),
    sessionId: text("session_id").notNull(),
    tokenHash: text("token_hash").notNull(),
    codeId: text("code_id").notNull(),
    name: text("name").notNull(),
    createdAt: timestamp("created_at", { withTimezone: true }).notNull().defaultNow(),
    seenAt: timestamp("seen_at", { withTimezone: true }),
    expiresAt: timestamp("expires_at", { withTimezone: true }).notNull(),
    revokedAt: timestamp("revoked_at", { withTimezone: true }),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.sessionId] })],
);
