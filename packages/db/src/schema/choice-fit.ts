import { integer, json, pgTable, primaryKey, text, timestamp } from "drizzle-orm/pg-core";

/** Append-only: the application may neither change nor delete. */
export const choiceFit = pgTable(
  "choice_fit",
  {
    academyId: text("academy_id").notNull(),
    version: integer("version").notNull(),
    fit: json("fit").notNull(),
    fittedAt: timestamp("fitted_at", { withTimezone: true }).notNull().defaultNow(),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.version] })],
);
