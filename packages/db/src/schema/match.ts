import { SIDES } from "@courtloom/core";
import { COACHING_MODES } from "@courtloom/match-log";
import type { MatchFormat, Surface } from "@courtloom/tennis";
import { boolean, date, integer, json, pgTable, primaryKey, text, timestamp } from "drizzle-orm/pg-core";

export const match = pgTable(
  "match",
  {
    academyId: text("academy_id").notNull(),
    matchId: text("match_id").notNull(),
    dayId: text("day_id"),
    courtId: text("court_id"),
    orderNo: integer("order_no").notNull(),
    title: text("title").notNull().default(""),
    playedOn: date("played_on").notNull(),
    playerA: text("player_a").notNull(),
    playerB: text("player_b").notNull(),
    partnerA: text("partner_a"),
    partnerB: text("partner_b"),
    matchFormat: json("match_format").$type<MatchFormat>().notNull(),
    firstServer: text("first_server", { enum: SIDES }),
    doubles: boolean("doubles").notNull().default(false),
    coachingMode: text("coaching_mode", { enum: COACHING_MODES }).notNull(),
    subjects: text("subjects", { enum: SIDES }).array().notNull(),
    surface: text("surface").$type<Surface>(),
    createdAt: timestamp("created_at", { withTimezone: true }).notNull().defaultNow(),
    openedAt: timestamp("opened_at", { withTimezone: true }),
    overAt: timestamp("over_at", { withTimezone: true }),
    sealedAt: timestamp("sealed_at", { withTimezone: true }),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.matchId] })],
);
