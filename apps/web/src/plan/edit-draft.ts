import type { PlanRule } from "@courtloom/match-log";
import type { AcademyRules, DraftRule, PlanDraft } from "./plan-draft.ts";

export type DraftEdit =
  | { readonly kind: "words" | "sentence" | "question"; readonly words: string }
  | { readonly kind: "rule"; readonly id: string; readonly rule: PlanRule }
  | { readonly kind: "ruleWords"; readonly id: string; readonly words: string }
  | { readonly kind: "add"; readonly id: string }
  | { readonly kind: "takeOut"; readonly id: string }
  /** An own rule changes places with the own rule before (-1) or after (1) it. */
  | { readonly kind: "move"; readonly id: string; readonly by: -1 | 1 }
  /** A rule of the academy's, or one that is left out, becomes one of the player's in its place. */
  | { readonly kind: "replace"; readonly id: string }
  | { readonly kind: "leaveOut"; readonly id: string }
  /** The academy's rule holds again as the academy wrote it. */
  | { readonly kind: "asAcademy"; readonly id: string }
  | { readonly kind: "makeOwn"; readonly id: string }
  /** Another content takes the draft's place. */
  | { readonly kind: "put"; readonly draft: PlanDraft };

const NEW_RULE = { when: {}, aim: "keep", lineOn: [], targets: [] } as const;

const change = (draft: PlanDraft, id: string, to: (rule: DraftRule) => DraftRule): PlanDraft => ({
  ...draft,
  rules: draft.rules.map((each) => (each.rule.id === id ? to(each) : each)),
});

const move = (draft: PlanDraft, id: string, by: -1 | 1): PlanDraft => {
  const at = draft.rules.findIndex(({ rule }) => rule.id === id);
  const [one, other] = [draft.rules[at], draft.rules[at + by]];
  if (one?.place !== "own" || other?.place !== "own") return draft;
  const rules = [...draft.rules];
  rules[at] = other;
  rules[at + by] = one;
  return { ...draft, rules };
};

/** Own rules come before the academy's, a new one after those that are there. */
const addOwn = (draft: PlanDraft, added: DraftRule): PlanDraft => {
  const rest = draft.rules.filter(({ rule }) => rule.id !== added.rule.id);
  const own = rest.filter(({ place }) => place === "own");
  return { ...draft, rules: [...own, added, ...rest.filter(({ place }) => place !== "own")] };
};

const makeOwn = (draft: PlanDraft, id: string): PlanDraft => {
  const found = draft.rules.find(({ rule }) => rule.id === id);
  return found ? addOwn(draft, { ...found, place: "own" }) : draft;
};

const asAcademy = (draft: PlanDraft, id: string, under: AcademyRules): PlanDraft => {
  const base = under.rules.find((rule) => rule.id === id);
  if (!base) return draft;
  return change(draft, id, () => ({ rule: base, words: under.ruleWords[id] ?? "", place: "academy" }));
};

/** The next draft; the same one where an edit does not apply. */
export const editDraft = (draft: PlanDraft, edit: DraftEdit, under: AcademyRules): PlanDraft => {
  switch (edit.kind) {
    case "words":
    case "sentence":
    case "question":
      return { ...draft, [edit.kind]: edit.words };
    case "rule":
      return change(draft, edit.id, (each) => ({ ...each, rule: edit.rule }));
    case "ruleWords":
      return change(draft, edit.id, (each) => ({ ...each, words: edit.words }));
    case "add":
      return addOwn(draft, { rule: { id: edit.id, ...NEW_RULE }, words: "", place: "own" });
    case "takeOut":
      return { ...draft, rules: draft.rules.filter(({ rule }) => rule.id !== edit.id) };
    case "move":
      return move(draft, edit.id, edit.by);
    case "replace":
      return change(asAcademy(draft, edit.id, under), edit.id, (each) => ({ ...each, place: "replaced" }));
    case "leaveOut":
      return change(asAcademy(draft, edit.id, under), edit.id, (each) => ({ ...each, place: "leftOut" }));
    case "asAcademy":
      return asAcademy(draft, edit.id, under);
    case "makeOwn":
      return makeOwn(draft, edit.id);
    case "put":
      return edit.draft;
  }
};
