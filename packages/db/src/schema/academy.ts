import { boolean, pgTable, primaryKey, text, timestamp } from "drizzle-orm/pg-core";

export const academy = pgTable("academy", {
  academyId: text("academy_id").primaryKey(),
  name: text("name").notNull(),
  timeZone: text("time_zone").notNull(),
  language: text("language").notNull(),
  isDemo: boolean("is_demo").notNull().default(false),
  createdAt: timestamp("created_at", { withTimezone: true }).notNull().defaultNow(),
});

export const member = pgTable(
  "member",
  {
    academyId: text("academy_id").notNull(),
    memberId: text("member_id").notNull(),
    role: text("role", { enum: ["director", "coach"] }).notNull(),
    displayName: text("display_name").notNull(),
    userId: text("user_id"),
    createdAt: timestamp("created_at", { withTimezone: true }).notNull().defaultNow(),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.memberId] })],
);
