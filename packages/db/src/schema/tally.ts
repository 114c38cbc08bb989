import { date, json, pgTable, primaryKey, text, timestamp } from "drizzle-orm/pg-core";

export const tally = pgTable(
  "tally",
  {
    academyId: text("academy_id").notNull(),
    playerId: text("player_id").notNull(),
    matchId: text("match_id").notNull(),
    playedOn: date("played_on").notNull(),
    version: text("version").notNull(),
    tally: json("tally").notNull(),
    writtenAt: timestamp("written_at", { withTimezone: true }).notNull().defaultNow(),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.playerId, t.matchId] })],
);
