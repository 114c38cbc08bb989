import { CHARTING_LEVELS } from "@courtloom/match-log";
import { sql } from "drizzle-orm";
import {
  boolean,
  customType,
  integer,
  json,
  pgTable,
  primaryKey,
  text,
  timestamp,
} from "drizzle-orm/pg-core";

const bytea = customType<{ data: Uint8Array }>({ dataType: () => "bytea" });

export const logMeta = pgTable("log_meta", {
  one: boolean("one").primaryKey().default(true),
  incarnation: text("incarnation").notNull(),
  beganAt: timestamp("began_at", { withTimezone: true }).notNull().defaultNow(),
});

export const matchHead = pgTable(
  "match_head",
  {
    academyId: text("academy_id").notNull(),
    matchId: text("match_id").notNull(),
    pos: integer("pos").notNull(),
    epoch: integer("epoch").notNull().default(0),
    leadLane: text("lead_lane"),
    sealed: boolean("sealed").notNull().default(false),
    changedAt: timestamp("changed_at", { withTimezone: true }).notNull().default(sql`clock_timestamp()`),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.matchId] })],
);

export const lane = pgTable(
  "lane",
  {
    academyId: text("academy_id").notNull(),
    matchId: text("match_id").notNull(),
    laneId: text("lane_id").notNull(),
    chartist: text("chartist").notNull(),
    ownerKind: text("owner_kind", { enum: ["desk", "member", "courtside"] }).notNull(),
    ownerId: text("owner_id").notNull(),
    level: text("level", { enum: CHARTING_LEVELS }).notNull(),
    epoch: integer("epoch").notNull(),
    cursor: integer("cursor").notNull().default(0),
    createdAt: timestamp("created_at", { withTimezone: true }).notNull().defaultNow(),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.matchId, t.laneId] })],
);

export const entry = pgTable(
  "entry",
  {
    academyId: text("academy_id").notNull(),
    matchId: text("match_id").notNull(),
    pos: integer("pos").notNull(),
    laneId: text("lane_id").notNull(),
    n: integer("n").notNull(),
    entryId: text("entry_id").notNull(),
    epoch: integer("epoch").notNull(),
    hash: bytea("hash").notNull(),
    entry: json("entry").notNull(),
    recvAt: timestamp("recv_at", { withTimezone: true }).notNull().defaultNow(),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.matchId, t.pos] })],
);

export const rejectedEntry = pgTable(
  "rejected_entry",
  {
    academyId: text("academy_id").notNull(),
    matchId: text("match_id").notNull(),
    laneId: text("lane_id").notNull(),
    n: integer("n").notNull(),
    code: text("code", { enum: ["bad_shape", "not_allowed"] }).notNull(),
    hash: bytea("hash").notNull(),
    raw: text("raw").notNull(),
    recvAt: timestamp("recv_at", { withTimezone: true }).notNull().defaultNow(),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.matchId, t.laneId, t.n] })],
);

export const heard = pgTable(
  "heard",
  {
    academyId: text("academy_id").notNull(),
    matchId: text("match_id").notNull(),
    heardAt: timestamp("heard_at", { withTimezone: true }).notNull(),
    unsent: integer("unsent").notNull(),
    changedAt: timestamp("changed_at", { withTimezone: true }).notNull().default(sql`clock_timestamp()`),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.matchId] })],
);
