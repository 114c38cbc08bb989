import type { PlanContent, PlanFile } from "@courtloom/api";
import type { PlanRule } from "@courtloom/match-log";

/**
 * Where a rule stands. `own`: of the plan that is open. The others are in a player's plan only: `academy` holds as
 * the academy wrote it, `replaced` is changed for this player in its place, `leftOut` does not hold, `unplaced`
 * replaced a rule that the academy no longer has, so that it does not hold until it is made an own one.
 */
export type RulePlace = "own" | "academy" | "replaced" | "leftOut" | "unplaced";

export interface DraftRule {
  readonly rule: PlanRule;
  readonly words: string;
  readonly place: RulePlace;
}

/** A plan while somebody changes it. In the order in which rules hold: own ones first, then the academy's. */
export interface PlanDraft {
  readonly words: string;
  /** For a change of ends. */
  readonly sentence: string;
  readonly question: string;
  readonly rules: readonly DraftRule[];
}

export type AcademyRules = Pick<PlanContent, "rules" | "ruleWords">;

export const NO_CONTENT: PlanContent = {
  words: "",
  rules: [],
  replaces: [],
  leavesOut: [],
  ruleWords: {},
  sentence: "",
  question: "",
};

/** The academy's rules that a player's plan stands on; nothing under the academy's own. */
export const underOf = ({ player, academy }: Pick<PlanFile, "player" | "academy">): AcademyRules =>
  (player && academy) || { rules: [], ruleWords: {} };

const placeOf = (id: string, content: PlanContent, isReplaced: boolean): RulePlace => {
  if (content.leavesOut.includes(id)) return "leftOut";
  return isReplaced ? "replaced" : "academy";
};

/** A plan's content over the academy's rules, to be changed. */
export const draftOf = (content: PlanContent, under: AcademyRules): PlanDraft => {
  const wordsOf = ({ id }: PlanRule) => content.ruleWords[id] ?? "";
  const own = content.rules.map((rule) => ({ rule, words: wordsOf(rule), place: "own" }) as const);
  const taken = new Set(content.rules.map(({ id }) => id));
  const there = new Set(under.rules.map(({ id }) => id));
  const academys = under.rules
    .filter(({ id }) => !taken.has(id))
    .map((base): DraftRule => {
      const replaced = content.replaces.find(({ id }) => id === base.id);
      const place = placeOf(base.id, content, replaced !== undefined);
      if (place === "replaced" && replaced) return { rule: replaced, words: wordsOf(replaced), place };
      return { rule: base, words: under.ruleWords[base.id] ?? "", place };
    });
  const unplaced = content.replaces
    .filter(({ id }) => !there.has(id))
    .map((rule) => ({ rule, words: wordsOf(rule), place: "unplaced" }) as const);
  const { words, sentence, question } = content;
  return { words, sentence, question, rules: [...own, ...academys, ...unplaced] };
};

/** Conditions are of use only where the aim is to keep; the draft remembers them, the plan does not. */
export const plainRule = (rule: PlanRule): PlanRule => (rule.aim === "keep" ? rule : { ...rule, lineOn: [] });

const inPlace = (draft: PlanDraft, ...places: readonly RulePlace[]): readonly DraftRule[] =>
  draft.rules.filter(({ place }) => places.includes(place));

/** What would be saved. */
export const contentOf = (draft: PlanDraft): PlanContent => {
  const rulesIn = (...places: readonly RulePlace[]) =>
    inPlace(draft, ...places).map(({ rule }) => plainRule(rule));
  const worded = inPlace(draft, "own", "replaced", "unplaced").filter(({ words }) => words.trim() !== "");
  return {
    words: draft.words,
    rules: rulesIn("own"),
    replaces: rulesIn("replaced", "unplaced"),
    leavesOut: inPlace(draft, "leftOut").map(({ rule }) => rule.id),
    ruleWords: Object.fromEntries(worded.map(({ rule, words }) => [rule.id, words])),
    sentence: draft.sentence,
    question: draft.question,
  };
};

/** The rules that hold, in their order, with what is not saved yet. */
export const holdingRules = (draft: PlanDraft): readonly DraftRule[] =>
  inPlace(draft, "own", "academy", "replaced").map((each) => ({ ...each, rule: plainRule(each.rule) }));
