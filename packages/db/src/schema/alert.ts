import { SIDES } from "@courtloom/core";
import { RATES } from "@courtloom/match-log";
import { integer, json, pgTable, primaryKey, text, timestamp } from "drizzle-orm/pg-core";
import type { AlertMarkDetails, AlertSaid } from "../alert-store.ts";
import { ALERT_MARK_KINDS, STORED_ALERT_STATES } from "../alert-store.ts";

const keyColumns = () => ({
  academyId: text("academy_id").notNull(),
  matchId: text("match_id").notNull(),
  playerId: text("player_id").notNull(),
  rate: text("rate", { enum: RATES }).notNull(),
  version: integer("version").notNull(),
  episode: integer("episode").notNull(),
});

export const alert = pgTable(
  "alert",
  {
    ...keyColumns(),
    side: text("side", { enum: SIDES }).notNull(),
    raisedEntry: text("raised_entry").notNull(),
    raisedPos: integer("raised_pos").notNull(),
    raisedAt: timestamp("raised_at", { withTimezone: true }).notNull(),
    state: text("state", { enum: STORED_ALERT_STATES }).notNull(),
    pos: integer("pos").notNull(),
    said: json("said").$type<AlertSaid>().notNull(),
    withdrawnAt: timestamp("withdrawn_at", { withTimezone: true }),
    withdrawnEntry: text("withdrawn_entry"),
    withdrawnLane: text("withdrawn_lane"),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.matchId, t.playerId, t.rate, t.version, t.episode] })],
);

/** Append-only: the application may neither change nor delete. */
export const alertNotice = pgTable(
  "alert_notice",
  {
    ...keyColumns(),
    transition: text("transition", { enum: ["raised"] }).notNull(),
    recipient: text("recipient").notNull(),
    channel: text("channel", { enum: ["app"] }).notNull(),
    atBreak: integer("at_break").notNull(),
    givenAt: timestamp("given_at", { withTimezone: true }).notNull(),
  },
  (t) => [
    primaryKey({
      columns: [
        t.academyId,
        t.matchId,
        t.playerId,
        t.rate,
        t.version,
        t.episode,
        t.transition,
        t.recipient,
        t.channel,
      ],
    }),
  ],
);

/** Append-only. */
export const alertMark = pgTable(
  "alert_mark",
  {
    ...keyColumns(),
    n: integer("n").notNull(),
    kind: text("kind", { enum: ALERT_MARK_KINDS }).notNull(),
    byMember: text("by_member").notNull(),
    madeAt: timestamp("made_at", { withTimezone: true }).notNull(),
    details: json("details").$type<AlertMarkDetails>().notNull(),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.matchId, t.playerId, t.rate, t.version, t.episode, t.n] })],
);
