import type { Surface } from "@courtloom/tennis";
import { date, pgTable, primaryKey, smallint, text, timestamp } from "drizzle-orm/pg-core";

export const day = pgTable(
  "day",
  {
    academyId: text("academy_id").notNull(),
    dayId: text("day_id").notNull(),
    name: text("name").notNull(),
    date: date("date").notNull(),
    surface: text("surface").$type<Surface>(),
    createdAt: timestamp("created_at", { withTimezone: true }).notNull().defaultNow(),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.dayId] })],
);

export const court = pgTable(
  "court",
  {
    academyId: text("academy_id").notNull(),
    dayId: text("day_id").notNull(),
    courtId: text("court_id").notNull(),
    no: smallint("no").notNull(),
    name: text("name").notNull(),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.courtId] })],
);
