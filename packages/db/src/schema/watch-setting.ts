import type { Rate } from "@courtloom/match-log";
import {
  boolean,
  doublePrecision,
  integer,
  jsonb,
  pgTable,
  primaryKey,
  text,
  timestamp,
} from "drizzle-orm/pg-core";

/** Append-only: the application may neither change nor delete. */
export const watchSetting = pgTable(
  "watch_setting",
  {
    academyId: text("academy_id").notNull(),
    settingId: text("setting_id").notNull(),
    playerId: text("player_id"),
    version: integer("version").notNull(),
    rates: jsonb("rates").$type<readonly Rate[]>(),
    alpha: doublePrecision("alpha"),
    quiet: boolean("quiet"),
    savedBy: text("saved_by").notNull(),
    savedAt: timestamp("saved_at", { withTimezone: true }).notNull().defaultNow(),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.settingId] })],
);
