import { boolean, pgTable, primaryKey, smallint, text, timestamp } from "drizzle-orm/pg-core";

export const player = pgTable(
  "player",
  {
    academyId: text("academy_id").notNull(),
    playerId: text("player_id").notNull(),
    displayName: text("display_name").notNull(),
    hand: text("hand", { enum: ["right", "left", "unknown"] }).notNull(),
    birthYear: smallint("birth_year"),
    squad: text("squad"),
    own: boolean("own").notNull(),
    level: smallint("level"),
    createdAt: timestamp("created_at", { withTimezone: true }).notNull().defaultNow(),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.playerId] })],
);
