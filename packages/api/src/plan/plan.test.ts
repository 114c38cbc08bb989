import { STARTER_PLAN } from "@courtloom/decisions";
import type { MatchOpened } from "@courtloom/match-log";
import { describe, expect, it } from "vitest";
import { ask } from "../testing/ask.ts";
import { makeApi } from "../testing/make-api.ts";
import { samplePlan } from "../testing/sample-plan.ts";
import { seedDay } from "../testing/seed-day.ts";

const open = async () => {
  const api = await makeApi();
  const academyId = await api.setup();
  const ids = await seedDay(api, academyId);
  return { api, academyId, ...ids, coach: api.callerAs("coach", academyId) };
};

const reasonOf = (asked: Promise<unknown>) =>
  asked.then(
    () => "done",
    (error: { cause?: { reason?: string } }) => error.cause?.reason,
  );

describe("plans", () => {
  it("[AP66] begins with the starter plan, once", async () => {
    const { coach, api, academyId } = await open();
    expect(await coach.plan.list()).toMatchObject({
      academy: null,
      players: [{ displayName: "Noor V.", plan: null }],
    });
    expect(await coach.plan.startFromStarter({})).toEqual({ version: 1 });
    const { academy, versions, player } = await coach.plan.get({ playerId: null });
    expect(player).toBeNull();
    expect(academy).toEqual(versions[0]);
    expect(academy?.rules).toEqual(STARTER_PLAN);
    expect(Object.keys(academy?.ruleWords ?? {}).sort()).toEqual(STARTER_PLAN.map(({ id }) => id).sort());
    const director = api.callerAs("director", academyId);
    expect(await reasonOf(director.plan.startFromStarter({}))).toBe("has_plan");
    expect((await coach.plan.get({ playerId: null })).versions).toHaveLength(1);
  });

  it("[AP60, AP64] adds a version over the one that was changed, and tells who saved which", async () => {
    const { coach, api } = await open();
    const plan = { playerId: null, ...samplePlan() };
    await coach.plan.save({ ...plan, expected: 0 });
    const next = { ...plan, expected: 1, words: "Build, then look.", note: "After Saturday" };
    await coach.plan.save(next);
    const { versions } = await coach.plan.get({ playerId: null });
    expect(versions).toMatchObject([
      { version: 2, words: "Build, then look.", note: "After Saturday", savedByName: "Maren H." },
      { version: 1, words: "Build first.", note: "" },
    ]);
    expect(api.memory.rows.audit.filter(({ action }) => action === "plan.save")).toHaveLength(2);
  });

  it("[AP60, PL13] keeps one sentence and one question for a change of ends, a line each, of 140 characters", async () => {
    const { coach, playerId } = await open();
    const { sentence: _s, question: _q, ...before } = samplePlan();
    expect(await coach.plan.save({ playerId: null, ...before, expected: 0 })).toMatchObject({
      sentence: "",
      question: "",
    });
    const said = { ...samplePlan(), sentence: "Look\nfirst. ", question: "a".repeat(140) };
    const saved = await coach.plan.save({ playerId: null, ...said, expected: 1 });
    expect(saved).toMatchObject({ sentence: "Look first.", question: said.question });
    const own = { playerId, ...samplePlan(), expected: 0, sentence: "b".repeat(141) };
    await expect(coach.plan.save(own)).rejects.toThrow(
      /One sentence for the change of ends: use at most 140 characters/,
    );
  });

  it("[AP62] refuses what was changed over an older version, and leaves the newer one as it is", async () => {
    const { coach } = await open();
    const plan = { playerId: null, ...samplePlan() };
    await coach.plan.save({ ...plan, expected: 0 });
    expect(await reasonOf(coach.plan.save({ ...plan, expected: 0, words: "Mine." }))).toBe("stale_plan");
    expect((await coach.plan.get({ playerId: null })).versions).toMatchObject([{ words: "Build first." }]);
  });

  it("[AP63] keeps the words of the rules that are there, and no others", async () => {
    const { coach } = await open();
    const ruleWords = { back: "Keep it.\r\n\r\nThen look.  ", gone: "Not there any more." };
    const saved = await coach.plan.save({ playerId: null, expected: 0, ...samplePlan(), ruleWords });
    expect(saved.ruleWords).toEqual({ back: "Keep it.\n\nThen look." });
  });

  it.each([
    ["rules.0.targets.0", { targets: [{ choice: "kept", wants: "atLeast", share: 0.05, tolerance: 0.1 }] }],
    ["rules.0.targets.0", { targets: [{ choice: "kept", wants: "atLeast", share: 7, tolerance: 0 }] }],
    ["rules.0.lineOn.0", { lineOn: [{ depth: ["insideServiceLine"] }] }],
    ["rules.0.when.depth", { when: { depth: [] } }],
    ["rules.0.aim", { aim: "win" }],
  ])("[AP61] names the field that is wrong: %s", async (field, change) => {
    const { api, academyId } = await open();
    const { rules, ...rest } = samplePlan();
    const input = {
      playerId: null,
      expected: 0,
      ...rest,
      rules: rules.map((rule) => ({ ...rule, ...change })),
    };
    const response = await api.handlerAs("coach", academyId)(ask("plan.save", "mutation", input));
    expect(response.status).toBe(400);
    const body = (await response.json()) as { error: { data: { fields: Record<string, string> } } };
    expect(Object.keys(body.error.data.fields)).toEqual([field]);
    expect(Object.values(body.error.data.fields)[0]).toMatch(/\. [A-Z]|, or |is from|Choose/);
    expect(api.memory.plans).toEqual([]);
  });

  it("[AP61] names a rule that never holds", async () => {
    const { api, academyId } = await open();
    const { rules, ...rest } = samplePlan();
    const twice = [...rules, ...rules.map((rule) => ({ ...rule, id: "again" }))];
    const input = { playerId: null, expected: 0, ...rest, rules: twice };
    const response = await api.handlerAs("coach", academyId)(ask("plan.save", "mutation", input));
    const body = (await response.json()) as { error: { data: { fields: Record<string, string> } } };
    expect(body.error.data.fields["rules.1"]).toMatch(/never holds/);
  });

  it("[AP65] tells what a match would begin with, and afterwards what it began with", async () => {
    const { coach, api, academyId, matchId, playerId } = await open();
    await coach.plan.startFromStarter({});
    const own = samplePlan("For Noor.");
    await coach.plan.save({ playerId, expected: 0, ...own });
    const now = await coach.plan.forMatch({ matchId });
    expect(now.B).toBeNull();
    expect(now.A).toMatchObject({ frozen: false, words: "For Noor.", plan: { version: 2 } });
    expect(now.A?.plan.rules.map(({ id }) => id)).toEqual(["back", ...STARTER_PLAN.map(({ id }) => id)]);

    const opened = { kind: "MatchOpened", plans: { A: now.A?.plan ?? null, B: null } };
    const entry = {
      v: 1,
      id: "e",
      n: 1,
      atMs: 0,
      wallMs: 0,
      body: opened as unknown as MatchOpened,
    } as const;
    api.memory.rows.matches = api.memory.rows.matches.map((match) => ({ ...match, stage: "open" }));
    api.memory.logs.openFromPhone(matchId, "desk", "");
    await api.memory.log.append({ academyId, matchId, laneId: "desk", items: [{ n: 1, entry }] });
    await coach.plan.save({ playerId, expected: 1, ...samplePlan("Changed.") });
    await coach.plan.save({ playerId: null, expected: 1, ...samplePlan("Changed too.") });
    const then = await coach.plan.forMatch({ matchId });
    expect(then.A).toEqual({ ...now.A, frozen: true });
  });
});
