import type { PlanRule } from "@courtloom/match-log";
import { integer, jsonb, pgTable, primaryKey, text, timestamp } from "drizzle-orm/pg-core";

export const plan = pgTable(
  "plan",
  {
    academyId: text("academy_id").notNull(),
    planId: text("plan_id").notNull(),
    playerId: text("player_id"),
    createdAt: timestamp("created_at", { withTimezone: true }).notNull().defaultNow(),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.planId] })],
);

/** Append-only: the application may neither change nor delete. */
export const planVersion = pgTable(
  "plan_version",
  {
    academyId: text("academy_id").notNull(),
    planId: text("plan_id").notNull(),
    version: integer("version").notNull(),
    onVersion: integer("on_version").notNull(),
    words: text("words").notNull(),
    rules: jsonb("rules").$type<readonly PlanRule[]>().notNull(),
    replaces: jsonb("replaces").$type<readonly PlanRule[]>().notNull(),
    leavesOut: jsonb("leaves_out").$type<readonly string[]>().notNull(),
    ruleWords: jsonb("rule_words").$type<Readonly<Record<string, string>>>().notNull(),
    sentence: text("sentence").notNull(),
    question: text("question").notNull(),
    note: text("note").notNull(),
    savedBy: text("saved_by").notNull(),
    savedAt: timestamp("saved_at", { withTimezone: true }).notNull().defaultNow(),
  },
  (t) => [primaryKey({ columns: [t.academyId, t.planId, t.version] })],
);
