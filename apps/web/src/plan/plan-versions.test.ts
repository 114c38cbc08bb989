import type { PlanContent } from "@courtloom/api";
import { STARTER_PLAN } from "@courtloom/decisions";
import type { PlanRule } from "@courtloom/match-log";
import { describe, expect, it } from "vitest";
import { mergeContent } from "./merge-content.ts";
import { planChanges } from "./plan-changes.ts";
import { NO_CONTENT } from "./plan-draft.ts";
import { isSameContent } from "./same.ts";

const rule = (id: string, over: Partial<PlanRule> = {}): PlanRule => ({
  id,
  when: { side: ["left"] },
  aim: "keep",
  lineOn: [],
  targets: [],
  ...over,
});
const BASE: PlanContent = {
  ...NO_CONTENT,
  words: "Build.",
  rules: [
    rule("a"),
    rule("b", { when: { side: ["right"] } }),
    rule("c", { when: { depth: ["behindBaseline"] } }),
  ],
  ruleWords: { a: "Keep it." },
};

describe("what changed between versions", () => {
  it("[PL8] is nothing between equal ones, whatever order their members have", () => {
    expect(planChanges(BASE, structuredClone(BASE))).toEqual([]);
    expect(isSameContent({ ...BASE, words: " Build.\n" }, BASE)).toBe(true);
    expect(isSameContent({ ...BASE, words: "Build on." }, BASE)).toBe(false);
  });

  it("[PL8] names words, rules added, changed and taken out, and the order", () => {
    const [a, b] = BASE.rules;
    const after: PlanContent = {
      ...BASE,
      words: "Build, then look.",
      rules: [
        ...(b ? [b] : []),
        {
          ...(a ?? rule("a")),
          aim: "free",
          targets: [{ choice: "line", wants: "atMost", share: 0.3, tolerance: 0 }],
        },
        rule("d", { when: {} }),
      ],
      ruleWords: { a: "As you like." },
    };
    expect(planChanges(BASE, after)).toEqual([
      "The words of the plan changed.",
      "From the left: the words, what it wants and the targets changed.",
      "Added: Every ball.",
      "Taken out: Behind the baseline.",
      "The order of the rules changed.",
    ]);
  });

  it("[PL8, PL13] names the sentence and the question for the change of ends", () => {
    const after = { ...BASE, sentence: "Look first.", question: "Which ball?" };
    expect(planChanges(BASE, after)).toEqual([
      "The sentence for the change of ends changed.",
      "The question for the change of ends changed.",
    ]);
    expect(isSameContent(BASE, after)).toBe(false);
    const theirs = { ...BASE, question: "Theirs?" };
    const merged = mergeContent({ base: BASE, theirs, mine: { ...BASE, sentence: "Mine." } });
    expect(merged).toEqual({ both: [], content: { ...theirs, sentence: "Mine." } });
    expect(mergeContent({ base: BASE, theirs, mine: after }).both).toEqual([
      "The question for the change of ends",
    ]);
  });

  it("[PL8] tells of a player's plan what it changes of the academy's, and what no longer", () => {
    const players = { ...NO_CONTENT, replaces: [rule("x")], leavesOut: ["y", "z"] };
    expect(planChanges(NO_CONTENT, players)).toEqual([
      "Changed for the player: From the left.",
      "2 rules of the academy's left out.",
    ]);
    expect(planChanges(players, NO_CONTENT)).toEqual([
      "As the academy's again: From the left.",
      "2 rules of the academy's no longer left out.",
    ]);
    expect(planChanges(NO_CONTENT, { ...NO_CONTENT, rules: STARTER_PLAN })).toHaveLength(STARTER_PLAN.length);
  });
});

describe("two people's changes", () => {
  it("[PL12] of different rules stand side by side, with nothing disputed", () => {
    const theirs = { ...BASE, words: "Theirs.", rules: [...BASE.rules, rule("d", { when: {} })] };
    const mine = {
      ...BASE,
      rules: BASE.rules.map((each) => (each.id === "b" ? { ...each, aim: "free" as const } : each)),
      ruleWords: { ...BASE.ruleWords, b: "Free." },
    };
    expect(mergeContent({ base: BASE, theirs, mine })).toEqual({
      both: [],
      content: {
        ...BASE,
        words: "Theirs.",
        rules: [rule("a"), { ...BASE.rules[1], aim: "free" }, BASE.rules[2], rule("d", { when: {} })],
        ruleWords: { a: "Keep it.", b: "Free." },
      },
    });
  });

  it("[PL12] of the same rule: the own change stands, and it is named", () => {
    const change = (aim: PlanRule["aim"]) => ({
      ...BASE,
      words: aim,
      rules: BASE.rules.map((each) => (each.id === "a" ? { ...each, aim } : each)),
    });
    const merged = mergeContent({ base: BASE, theirs: change("free"), mine: change("straight") });
    expect(merged.both).toEqual(["The words of the plan", "From the left"]);
    expect(merged.content.rules[0]).toMatchObject({ aim: "straight" });
    expect(merged.content.words).toBe("straight");
  });

  it("[PL12] a rule that one took out and the other left alone is out; both added ones are in", () => {
    const theirs = { ...BASE, rules: BASE.rules.slice(1), leavesOut: ["x"] };
    const mine = { ...BASE, rules: [...BASE.rules, rule("e")], replaces: [rule("r")] };
    const { content } = mergeContent({ base: BASE, theirs, mine });
    expect(content.rules.map(({ id }) => id)).toEqual(["b", "c", "e"]);
    expect(content.replaces.map(({ id }) => id)).toEqual(["r"]);
    expect(content.leavesOut).toEqual(["x"]);
  });

  it("[PL12] the order is that of whoever changed it", () => {
    const mine = { ...BASE, rules: BASE.rules.toReversed() };
    expect(mergeContent({ base: BASE, theirs: BASE, mine }).content.rules).toEqual(mine.rules);
    expect(mergeContent({ base: BASE, theirs: mine, mine: BASE }).content.rules).toEqual(mine.rules);
  });
});
