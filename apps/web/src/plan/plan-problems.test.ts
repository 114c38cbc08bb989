import { STARTER_PLAN } from "@courtloom/decisions";
import { describe, expect, it } from "vitest";
import { createDraftShelf } from "./kept-draft.ts";
import { draftOf, NO_CONTENT } from "./plan-draft.ts";
import { neverHeld, problemsOf, refusedByRule } from "./plan-problems.ts";

const UNDER = { rules: STARTER_PLAN, ruleWords: {} };
const EVERY = { id: "every", when: {}, aim: "keep", lineOn: [], targets: [] } as const;

describe("what keeps a plan from being saved", () => {
  it("[PL7] is nothing for the starter plan", () => {
    expect(problemsOf(draftOf({ ...NO_CONTENT, rules: STARTER_PLAN }, { rules: [], ruleWords: {} }))).toEqual(
      {},
    );
  });

  it("[PL7] stands with its rule, with the condition or target that it is about", () => {
    const target = { choice: "kept", wants: "atLeast", share: 0.02, tolerance: 0.05 } as const;
    const wrong = { ...EVERY, when: { side: ["left"] as const }, lineOn: [{ side: ["right"] as const }] };
    const draft = draftOf(
      { ...NO_CONTENT, rules: [wrong], replaces: [{ ...EVERY, id: "short-low", targets: [target] }] },
      UNDER,
    );
    expect(problemsOf(draft)).toEqual({
      every: [expect.stringMatching(/^Condition 1: No ball of this rule can fit/)],
      "short-low": [expect.stringMatching(/^Target 1: With that tolerance/)],
    });
  });

  it("[PL7] a player's rule may take all balls of the academy's: that is told and not refused", () => {
    const draft = draftOf({ ...NO_CONTENT, rules: [EVERY] }, UNDER);
    expect(problemsOf(draft)).toEqual({});
    expect([...neverHeld(draft)]).toEqual(STARTER_PLAN.map(({ id }) => id));
  });

  it("[PL7] puts what the server refused beside its rule", () => {
    const draft = draftOf(
      { ...NO_CONTENT, rules: [EVERY], replaces: [{ ...EVERY, id: "short-low" }] },
      UNDER,
    );
    const fields = {
      "rules.0.when.depth": "One.",
      "replaces.0": "Two.",
      "ruleWords.every": "Three.",
      words: "Four.",
    };
    expect(refusedByRule(draft, fields)).toEqual({
      every: ["One.", "Three."],
      "short-low": ["Two."],
      "": ["Four."],
    });
  });
});

describe("changes that are not saved", () => {
  const draft = draftOf({ ...NO_CONTENT, rules: [EVERY] }, UNDER);
  const shelfIn = (items: Map<string, string>) => ({
    getItem: (key: string) => items.get(key) ?? null,
    setItem: (key: string, value: string) => void items.set(key, value),
    removeItem: (key: string) => void items.delete(key),
  });

  it("[PL9] wait for the same member and plan, until they are saved or dropped", () => {
    const items = new Map<string, string>();
    const shelf = createDraftShelf(() => shelfIn(items), "maren", null);
    expect(shelf.find()).toBeUndefined();
    expect(shelf.keep({ expected: 2, keptMs: 5, draft })).toBe(true);
    expect(shelf.find()).toEqual({ expected: 2, keptMs: 5, draft });
    expect(createDraftShelf(() => shelfIn(items), "tobias", null).find()).toBeUndefined();
    expect(createDraftShelf(() => shelfIn(items), "maren", "noor").find()).toBeUndefined();
    shelf.drop();
    expect(shelf.find()).toBeUndefined();
  });

  it("[PL9] are not found where the device keeps nothing, or something else", () => {
    const refused = createDraftShelf(
      () => {
        throw new Error("no storage");
      },
      "maren",
      null,
    );
    expect(refused.keep({ expected: 0, keptMs: 0, draft })).toBe(false);
    expect(refused.find()).toBeUndefined();
    const items = new Map([["courtloom-plan:maren:academy", '{"expected":1}']]);
    expect(createDraftShelf(() => shelfIn(items), "maren", null).find()).toBeUndefined();
  });
});
