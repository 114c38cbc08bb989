import { pgTable, primaryKey, text, timestamp } from "drizzle-orm/pg-core";

export const handOver = pgTable(
  "hand_over",
  {
    academyId: text("academy_id").notNull(),
    handOverId: text("hand_over_id").notNull(),
    codeHash: text("code_hash").notNull(),
    codeId: text("code_id").notNull(),
    matchId: text("match_id").notNull(),
    fromLane: text("from_lane").notNull(),
    level: text("level", { enum: ["score", "key", "every"] }).notNull(),
    madeAt: timestamp("made_at", { withTimezone: true }).notNull(),
    expiresAt: timestamp("expires_at", { withTimezone: true }).notNull(),
    withdrawnAt: timestamp("withdrawn_at", { withTimezone: true }),
    grantedAt: timestamp("granted_at", { withTimezone: true }),
    grantedUntil: timestamp("granted_until", { withTimezone: true }),
    grantedKind: text("granted_kind", { enum: ["member", "courtside"] }),
    grantedId: text("granted_id"),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.handOverId] })],
);
