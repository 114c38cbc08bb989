import { byPlayer } from "@courtloom/core";
import { COACHING_MODES, type MatchOpened, type UsualRate } from "@courtloom/match-log";
import { openedWith } from "@courtloom/match-log/testing";
import { holdsFigures, holdsWords, type LiveRole, mayHold } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { ask, readAnswer } from "../testing/ask.ts";
import { makeApi, ROLES, type Role } from "../testing/make-api.ts";
import { samplePlan } from "../testing/sample-plan.ts";
import { seedDay } from "../testing/seed-day.ts";

/** Each stands in one place only, so that finding it in an answer says what got there. */
const CANARY = { words: "canary-words", sentence: "canary-sentence", question: "canary-question" } as const;
const USUAL = 0.313131;
const rate: UsualRate = { mean: USUAL, low: 0.1, high: 0.5, a: 6, b: 14, source: "own" };

/** A match that is played, with a plan, a usual rate and a watch in its opening. */
const open = async () => {
  const api = await makeApi();
  const academyId = await api.setup();
  const ids = await seedDay(api, academyId);
  const coach = api.callerAs("coach", academyId);
  const own = { ...samplePlan(CANARY.words), sentence: CANARY.sentence };
  await coach.plan.save({ playerId: null, expected: 0, ...samplePlan(), question: CANARY.question });
  await coach.plan.save({ playerId: ids.playerId, expected: 0, ...own, question: "" });
  const { A } = await coach.plan.forMatch({ matchId: ids.matchId });
  const body: MatchOpened = openedWith({
    matchId: ids.matchId,
    usualRates: { A: { lineMissed: rate }, B: {} },
    plans: { A: A?.plan ?? null, B: null },
  });
  api.memory.logs.openFromPhone(ids.matchId, "desk", "");
  const entry = { v: 1, id: "e", n: 1, atMs: 0, wallMs: 0, body } as const;
  await api.memory.log.append({ academyId, matchId: ids.matchId, laneId: "desk", items: [{ n: 1, entry }] });
  const say = (change: { coachingMode?: (typeof COACHING_MODES)[number]; bothOwn?: boolean }) => {
    const { bothOwn, ...mode } = change;
    api.memory.rows.matches = api.memory.rows.matches.map((match) => ({
      ...match,
      ...mode,
      stage: "open",
      players: byPlayer((side) => ({ ...match.players[side], own: side === "A" || bothOwn === true })),
    }));
  };
  return { api, academyId, coach, say, ...ids };
};

const LIVE: Readonly<Record<Role, LiveRole | "none">> = {
  nobody: "none",
  expired: "none",
  wall: "wall",
  courtside: "helper",
  coach: "coach",
  director: "director",
};

const cells = ROLES.flatMap((role) =>
  COACHING_MODES.flatMap((mode) => [false, true].map((bothOwn) => ({ role, mode, bothOwn }))),
);

describe("a plan's words on the court", () => {
  it.each(cells)("[CM1, CM7] $role, $mode, both own $bothOwn: what the procedures answer", async (cell) => {
    const { role, mode, bothOwn } = cell;
    const { api, academyId, matchId, say } = await open();
    say({ coachingMode: mode, bothOwn });
    const answers = async (path: string, input: object) =>
      (await readAnswer(await api.handlerAs(role, academyId)(ask(path, "query", input)))).text;
    const holding = (screen: "pad" | "courtPage") => {
      const live = LIVE[role];
      return live === "none" ? "nothing" : mayHold({ screen, role: live, mode, bothOwn });
    };
    const pad = await answers("plan.courtWords", { matchId });
    for (const canary of Object.values(CANARY)) {
      expect([canary, pad.includes(canary)]).toEqual([canary, holdsWords(holding("pad"))]);
    }
    expect(pad).not.toMatch(/rules|lineOn|ruleWords|planId|0\.313131/);
    const court = [
      await answers("match.log", { matchId, after: 0, limit: 50 }),
      await answers("plan.forMatch", { matchId }),
    ];
    expect(court.map((text) => /0\.313131|lineOn/.test(text))).toEqual(
      [0, 1].map(() => holdsFigures(holding("courtPage"))),
    );
  });

  it("[CM8] are the player's where there are some, else the academy's, as the match began with them", async () => {
    const { coach, say, matchId, playerId } = await open();
    say({ coachingMode: "practice" });
    expect(await coach.plan.courtWords({ matchId })).toEqual(CANARY);
    await coach.plan.save({ playerId, expected: 1, ...samplePlan("Changed."), sentence: "Changed." });
    expect(await coach.plan.courtWords({ matchId })).toEqual(CANARY);
  });

  it("[CM6] go as soon as the desk says another mode, and come back with it", async () => {
    const { api, academyId, coach, say, matchId } = await open();
    say({ coachingMode: "permitted" });
    const director = api.callerAs("director", academyId);
    const after = async (coachingMode: (typeof COACHING_MODES)[number]) => {
      await director.match.setCoachingMode({ matchId, coachingMode });
      return coach.plan.courtWords({ matchId });
    };
    expect([await after("notKnown"), await after("practice"), await after("notPermitted")]).toEqual([
      null,
      CANARY,
      null,
    ]);
  });

  it("[CM7] are empty where there is no plan, and a match that is not there is said to be so", async () => {
    const api = await makeApi();
    const academyId = await api.setup();
    const { matchId } = await seedDay(api, academyId);
    const coach = api.callerAs("coach", academyId);
    await api.callerAs("director", academyId).match.setCoachingMode({ matchId, coachingMode: "practice" });
    expect(await coach.plan.courtWords({ matchId })).toEqual({ words: "", sentence: "", question: "" });
    const other = "00000000-0000-4000-8000-000000000001";
    await expect(coach.plan.courtWords({ matchId: other })).rejects.toThrow();
  });
});
