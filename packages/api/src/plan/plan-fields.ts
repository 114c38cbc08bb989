import {
  BALL_HEIGHTS,
  BALL_TIMES,
  OPPONENT_PLACES,
  PLAN_CHOICES,
  type PlanRule,
  RULE_AIMS,
} from "@courtloom/match-log";
import { CHANNELS, DEPTHS_STRUCK } from "@courtloom/tennis";
import { z } from "zod";
import { longText } from "../fields.ts";

export const MOST_RULES = 24;
const MOST_CONDITIONS = 6;
const MOST_TARGETS = 4;

const MADE_ANEW = "This rule cannot be read. Leave it out and write it anew.";

const ruleIdField = z.string(MADE_ANEW).regex(/^[a-z0-9][a-z0-9-]{0,63}$/, MADE_ANEW);

/** Some of the values, each at most once. */
const someOf = <const T extends readonly [string, ...string[]]>(values: T) =>
  z
    .array(z.enum(values, MADE_ANEW), MADE_ANEW)
    .min(1, "Choose at least one, or leave the question open.")
    .max(values.length, MADE_ANEW)
    .refine((chosen) => new Set(chosen).size === chosen.length, MADE_ANEW)
    .exactOptional();

const facetsField = z.strictObject(
  {
    depth: someOf(DEPTHS_STRUCK),
    side: someOf(CHANNELS),
    ballHeight: someOf(BALL_HEIGHTS),
    ballTime: someOf(BALL_TIMES),
    opponent: someOf(OPPONENT_PLACES),
  },
  MADE_ANEW,
);

const targetField = z.strictObject(
  {
    choice: z.enum(PLAN_CHOICES, MADE_ANEW),
    wants: z.enum(["atLeast", "atMost"], MADE_ANEW),
    share: z.number("The share is missing. Write a number."),
    tolerance: z.number("The tolerance is missing. Write a number."),
  },
  MADE_ANEW,
);

const ruleField = z.strictObject(
  {
    id: ruleIdField,
    when: facetsField,
    aim: z.enum(RULE_AIMS, "Choose what the rule wants."),
    lineOn: z
      .array(facetsField, MADE_ANEW)
      .max(MOST_CONDITIONS, `Name at most ${MOST_CONDITIONS} conditions for one rule.`),
    targets: z
      .array(targetField, MADE_ANEW)
      .max(MOST_TARGETS, `Name at most ${MOST_TARGETS} targets for one rule.`),
  },
  MADE_ANEW,
) satisfies z.ZodType<PlanRule>;

export const rulesField = z
  .array(ruleField, MADE_ANEW)
  .max(MOST_RULES, `A plan has at most ${MOST_RULES} rules. Leave some out.`);

export const ruleIdsField = z.array(ruleIdField, MADE_ANEW).max(MOST_RULES, MADE_ANEW);

/** As long as can be said in one breath at a change of ends; may be empty. */
const MOST_COURT_WORDS = 140;

/** One line; a page from before there were such words sends none. */
const courtWordsField = (what: string) =>
  longText(what, MOST_COURT_WORDS)
    .transform((text) => text.replace(/\n+/g, " "))
    .default("");

export const sentenceField = courtWordsField("One sentence for the change of ends");
export const questionField = courtWordsField("One question for the change of ends");

export const planWordsField = longText("The words of the plan", 1000);

export const ruleWordsField = z
  .record(ruleIdField, longText("The words of the rule", 400), MADE_ANEW)
  .refine((words) => Object.keys(words).length <= MOST_RULES * 2, MADE_ANEW);
