import { integer, pgTable, text, timestamp } from "drizzle-orm/pg-core";

/** Tries at passwords and codes, before any academy is known. */
export const tryCount = pgTable("try_count", {
  key: text("key").primaryKey(),
  uses: integer("uses").notNull(),
  resetAt: timestamp("reset_at", { withTimezone: true }).notNull(),
});
