import { err, ok, type Principal } from "@courtloom/core";
import { describe, expect, it } from "vitest";
import { courtsideWords } from "../../pad/refusal-words.ts";
import { codeTrouble } from "../answer-courtside.ts";
import { createSource, ids } from "../testing/source.ts";
import { type HandOverMeans, makeHandOver, withdrawHandOver } from "./answer-hand-over.ts";
import { parseHandOverAsk, parseHandOverLane } from "./parse-hand-over.ts";

const NOON = Date.UTC(2026, 4, 30, 12);
const LANE = "00000000-0000-4000-8000-0000000000aa";
const at = { academyId: ids.academy, sessionId: "s", dayId: ids.day };
const helper: Principal = { kind: "courtside", ...at, name: "Dana H.", courtId: ids.court1 };
const wall: Principal = { kind: "wall", ...at };
const coach: Principal = {
  ...{ kind: "account", academyId: ids.academy, userId: "u", memberId: "m" },
  ...{ name: "Tobias A.", role: "coach" },
};
const stranger: Principal = { ...coach, academyId: "another" };

interface World {
  readonly principal?: Principal;
  readonly wallMs?: number;
  /** The court has a code from the start. */
  readonly hasCode?: boolean;
}

/** What was asked of the accounts, in order, and noted. */
const createWorld = ({ principal, wallMs = NOON, hasCode = true }: World) => {
  const did: string[] = [];
  let covered = hasCode;
  const source = createSource();
  const means: HandOverMeans = {
    auth: {
      principalOf: async () => (principal ? ok(principal) : err("signed_out")),
      makeHandOver: async ({ laneId, level, court }) => {
        if (!covered) return err("no_code");
        if (laneId !== LANE) return err("not_lead");
        did.push(`made at ${level} on ${court.courtId === ids.court1 ? "1" : "2"}`);
        return ok({ handOverId: "h", code: "ABC234", endsMs: wallMs + 600_000 });
      },
      withdrawHandOver: async ({ by }) => {
        did.push(`withdrawn by ${by.name}`);
        return true;
      },
      issueCode: async ({ by, expiresMs }) => {
        covered = true;
        did.push(`issued by ${by} until ${new Date(expiresMs).toISOString()}`);
        return ok({ codeId: "c", code: "XYZ567" });
      },
    },
    source: {
      ...source,
      matchCard: async (ref) => (ref.academyId === ids.academy ? source.matchCard(ref) : undefined),
    },
    writeAudit: async ({ actor, action, subject }) => void did.push(`${actor} ${action} ${subject}`),
    wallMs: () => wallMs,
  };
  const make = (matchId: string, laneId = LANE) =>
    makeHandOver(means, undefined, { matchId, laneId, level: "key" });
  const withdraw = (matchId: string) => withdrawHandOver(means, undefined, { matchId, laneId: LANE });
  return { did, make, withdraw };
};

describe("asking for a hand-over code", () => {
  it("[AU21] gives one to a court's phone for a match of its court, and notes it", async () => {
    const { did, make } = createWorld({ principal: helper });
    expect(await make(ids.open)).toEqual(ok({ code: "ABC234", endsInMs: 600_000 }));
    expect(did).toEqual(["made at key on 1", "s handOver.make h"]);
  });

  it("[AU21] staff give a court its code first where it has none, for as long as codes of that day live", async () => {
    const { did, make } = createWorld({ principal: coach, hasCode: false });
    expect((await make(ids.open)).ok).toBe(true);
    expect(did).toEqual([
      "issued by m until 2026-05-31T03:00:00.000Z",
      "m code.issue c",
      "made at key on 1",
      "m handOver.make h",
    ]);
    const late = createWorld({ principal: coach, hasCode: false, wallMs: NOON + 24 * 3_600_000 });
    expect(await late.make(ids.open)).toEqual(err("day_over"));
    const phone = createWorld({ principal: helper, hasCode: false });
    expect(await phone.make(ids.open)).toEqual(err("no_court"));
    expect([...late.did, ...phone.did]).toEqual([]);
  });

  const AUDIENCE = [
    ["nobody", undefined, ids.open, "signed_out"],
    ["a wall", wall, ids.open, "forbidden"],
    ["another academy's coach", stranger, ids.open, "unknown_match"],
    ["a helper for another court", helper, ids.elsewhere, "unknown_match"],
    ["a helper for no match", helper, ids.academy, "unknown_match"],
    ["staff for no match", coach, ids.academy, "unknown_match"],
  ] as const;

  it.each(AUDIENCE)(
    "[AU22] refuses %s, and neither makes, withdraws nor notes anything",
    async (_, who, matchId, code) => {
      const { did, make, withdraw } = createWorld(who ? { principal: who } : {});
      expect(await make(matchId)).toEqual(err(code));
      expect(await withdraw(matchId)).toEqual(err(code));
      expect(did).toEqual([]);
    },
  );

  it("[AU22] tells a phone that does not lead, and withdraws for one that does", async () => {
    const { did, make, withdraw } = createWorld({ principal: coach });
    expect(await make(ids.open, ids.academy)).toEqual(err("not_lead"));
    expect(await withdraw(ids.elsewhere)).toEqual(ok(undefined));
    expect(did).toEqual(["withdrawn by Tobias A."]);
  });

  it("[PD62] reads bodies with exactly what is asked, and has words for every end of a code", () => {
    const lane = { matchId: ids.open, laneId: LANE };
    expect(parseHandOverAsk(JSON.stringify({ ...lane, level: "every" }))).toEqual({
      ...lane,
      level: "every",
    });
    expect(parseHandOverLane(JSON.stringify(lane))).toEqual(lane);
    for (const bad of [
      ...["", "[]", "null", "{}", '"x"', JSON.stringify(lane)],
      JSON.stringify({ ...lane, level: "constructor" }),
      JSON.stringify({ ...lane, level: "key", more: 1 }),
      JSON.stringify({ matchId: "' or 1=1", laneId: LANE, level: "key" }),
      JSON.stringify({ matchId: ids.open, laneId: { a: 1 }, level: "key" }),
    ]) {
      expect(parseHandOverAsk(bad), bad).toBeUndefined();
      if (bad !== JSON.stringify(lane)) expect(parseHandOverLane(bad), bad).toBeUndefined();
    }
    const words = (refusal: Parameters<typeof codeTrouble>[0]) =>
      courtsideWords({ ok: false, code: codeTrouble(refusal) });
    expect(words("hand_over_used")).toContain("was used");
    expect(words("hand_over_ended")).toContain("has ended");
    expect(words("unknown_code")).toContain("not known");
  });
});
