import type { PlanContent } from "@courtloom/api";
import { STARTER_PLAN } from "@courtloom/decisions";
import type { PlanRule } from "@courtloom/match-log";
import { describe, expect, it } from "vitest";
import { type DraftEdit, editDraft } from "./edit-draft.ts";
import { contentOf, draftOf, holdingRules, NO_CONTENT, type PlanDraft, underOf } from "./plan-draft.ts";

const UNDER = { rules: STARTER_PLAN, ruleWords: { "short-low": "Straight and in." } };
const OWN: PlanRule = { id: "mine", when: { side: ["left"] }, aim: "keep", lineOn: [], targets: [] };
const PLAYERS: PlanContent = {
  words: "For Noor.",
  rules: [OWN],
  replaces: [
    { ...OWN, id: "behind-baseline" },
    { ...OWN, id: "gone" },
  ],
  leavesOut: ["short-high"],
  ruleWords: { mine: "Wait.", "behind-baseline": "Keep it twice." },
  sentence: "Wait, Noor.",
  question: "Which ball?",
};

const places = (draft: PlanDraft) => draft.rules.map(({ rule, place }) => `${rule.id} ${place}`);
const edited = (draft: PlanDraft, ...edits: readonly DraftEdit[]) =>
  edits.reduce((now, edit) => editDraft(now, edit, UNDER), draft);

describe("a plan under change", () => {
  it("[PL4] says of each rule where it stands: own, the academy's, replaced, left out, without a place", () => {
    expect(places(draftOf(PLAYERS, UNDER))).toEqual([
      "mine own",
      "short-low academy",
      "short-high leftOut",
      "behind-baseline replaced",
      "inside-baseline academy",
      "gone unplaced",
    ]);
  });

  it("[PL4] unchanged, it saves what it was opened with, also what has no place any more", () => {
    expect(contentOf(draftOf(PLAYERS, UNDER))).toEqual(PLAYERS);
    const academys = { ...NO_CONTENT, rules: STARTER_PLAN, words: "Build." };
    expect(contentOf(draftOf(academys, underOf({ player: null, academy: null })))).toEqual(academys);
  });

  it("[PL13] keeps a sentence and a question for the change of ends, each changed by itself", () => {
    const changed = edited(
      draftOf(PLAYERS, UNDER),
      { kind: "sentence", words: "Look first." },
      { kind: "question", words: "" },
    );
    expect(contentOf(changed)).toEqual({ ...PLAYERS, sentence: "Look first.", question: "" });
  });

  it("[PL4] replaces a rule in its place, leaves one out, and takes both back", () => {
    const draft = draftOf(NO_CONTENT, UNDER);
    const changed = edited(
      draft,
      { kind: "replace", id: "short-low" },
      { kind: "ruleWords", id: "short-low", words: "In, Noor." },
      { kind: "leaveOut", id: "inside-baseline" },
    );
    expect(contentOf(changed)).toMatchObject({
      rules: [],
      replaces: [{ id: "short-low" }],
      leavesOut: ["inside-baseline"],
      ruleWords: { "short-low": "In, Noor." },
    });
    expect(holdingRules(changed).map(({ rule }) => rule.id)).toEqual([
      "short-low",
      "short-high",
      "behind-baseline",
    ]);
    const back = edited(
      changed,
      { kind: "asAcademy", id: "short-low" },
      { kind: "asAcademy", id: "inside-baseline" },
    );
    expect(back).toEqual(draft);
  });

  it("[PL2] moves own rules among themselves only; a new one comes after them and before the academy's", () => {
    const draft = edited(draftOf(PLAYERS, UNDER), { kind: "add", id: "new" });
    expect(places(draft).slice(0, 3)).toEqual(["mine own", "new own", "short-low academy"]);
    const up = edited(draft, { kind: "move", id: "new", by: -1 });
    expect(contentOf(up).rules.map(({ id }) => id)).toEqual(["new", "mine"]);
    expect(edited(up, { kind: "move", id: "new", by: -1 })).toEqual(up);
    expect(edited(up, { kind: "move", id: "mine", by: 1 })).toEqual(up);
  });

  it("[PL4] makes an own rule of one without a place, so that it holds again", () => {
    const draft = edited(draftOf(PLAYERS, UNDER), { kind: "makeOwn", id: "gone" });
    expect(contentOf(draft)).toMatchObject({
      rules: [{ id: "mine" }, { id: "gone" }],
      replaces: [{ id: "behind-baseline" }],
    });
  });

  it("[PL2] remembers conditions while another aim is tried, and does not save them", () => {
    const draft = draftOf({ ...NO_CONTENT, rules: STARTER_PLAN }, { rules: [], ruleWords: {} });
    const behind = STARTER_PLAN.find(({ id }) => id === "behind-baseline");
    if (!behind) throw new Error("the starter plan has that rule");
    const free = edited(draft, { kind: "rule", id: behind.id, rule: { ...behind, aim: "free" } });
    expect(contentOf(free).rules[2]).toMatchObject({ aim: "free", lineOn: [] });
    const kept = free.rules[2]?.rule ?? behind;
    const again = edited(free, { kind: "rule", id: behind.id, rule: { ...kept, aim: "keep" } });
    expect(contentOf(again).rules[2]).toEqual(behind);
  });
});
