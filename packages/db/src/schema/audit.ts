import { json, pgTable, primaryKey, text, timestamp, uuid } from "drizzle-orm/pg-core";

/** Append-only: the application may neither read, change nor delete. */
export const audit = pgTable(
  "audit",
  {
    academyId: text("academy_id").notNull(),
    auditId: uuid("audit_id").notNull().defaultRandom(),
    at: timestamp("at", { withTimezone: true }).notNull().defaultNow(),
    actor: text("actor").notNull(),
    action: text("action").notNull(),
    subject: text("subject"),
    detail: json("detail"),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.auditId] })],
);
