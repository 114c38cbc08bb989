import { z } from "zod";
import { audit } from "../audit.ts";
import { failure } from "../errors/failure.ts";
import { idField, longText } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";
import { checkPlan } from "./check-plan.ts";
import {
  planWordsField,
  questionField,
  ruleIdsField,
  rulesField,
  ruleWordsField,
  sentenceField,
} from "./plan-fields.ts";

const input = z
  .strictObject({
    playerId: idField.nullable(),
    expected: z.int("Reload the page.").min(0, "Reload the page.").max(1_000_000, "Reload the page."),
    words: planWordsField,
    rules: rulesField,
    replaces: rulesField,
    leavesOut: ruleIdsField,
    ruleWords: ruleWordsField,
    sentence: sentenceField,
    question: questionField,
    note: longText("What changed", 120).default(""),
  })
  .superRefine(checkPlan);

/** Words of rules that are there; those of rules taken out go with them. */
const wordsOfRules = (
  words: Readonly<Record<string, string>>,
  rules: readonly { readonly id: string }[],
): Record<string, string> =>
  Object.fromEntries(rules.flatMap(({ id }) => (words[id] ? [[id, words[id]]] : [])));

/**
 * Adds a version to the academy's plan, or with `playerId` to that player's, over the version `expected`. Where
 * somebody saved meanwhile nothing is written. Rules AP60 to AP63.
 */
export const savePlan = staffProcedure
  .input(input)
  .mutation(async ({ ctx, input: { playerId, expected, note, ...content } }) => {
    const { academyId, memberId } = ctx.staff;
    const { rules, replaces } = content;
    const saved = await ctx.store.savePlan({
      academyId,
      playerId,
      expected,
      content: { ...content, ruleWords: wordsOfRules(content.ruleWords, [...rules, ...replaces]) },
      note,
      savedBy: memberId,
    });
    if (!saved.ok) throw failure(saved.error.code);
    await audit(ctx, "plan.save", saved.value.planId);
    return saved.value;
  });
