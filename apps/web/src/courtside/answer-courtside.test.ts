import { err, ok, type Principal } from "@courtloom/core";
import { describe, expect, it } from "vitest";
import { answerCourtside, codeTrouble } from "./answer-courtside.ts";
import { parseEnter } from "./parse-enter.ts";
import { createSource, ids } from "./testing/source.ts";

const at = { academyId: ids.academy, sessionId: "s", dayId: ids.day };
const helper: Principal = { kind: "courtside", ...at, name: "Dana H.", courtId: ids.court1 };
const wall: Principal = { kind: "wall", ...at };
const coach: Principal = {
  kind: "account",
  academyId: ids.academy,
  userId: "u",
  memberId: "m",
  name: "Tobias A.",
  role: "coach",
};

const asking = (principal: Principal | undefined, matchId: string | null = null) =>
  answerCourtside(
    { principalOf: async () => (principal ? ok(principal) : err("signed_out")) },
    createSource(),
    { cookieHeader: undefined, matchId },
  );

describe("courtside", () => {
  it("[WB2] tells a helper the matches of their own court in order, and who charts", async () => {
    const answer = await asking(helper);
    if (!answer.ok) throw new Error(answer.error);
    expect(answer.value).toMatchObject({ courtName: "Court 1", chartist: "Dana H.", staff: false });
    expect(answer.value.matches.map((match) => [match.matchId, match.state, match.charting])).toEqual([
      [ids.open, "playing", "Rosa T."],
      [ids.waiting, "waiting", undefined],
    ]);
  });

  it("[WB2] refuses a helper the match of another court", async () => {
    expect(await asking(helper, ids.elsewhere)).toEqual(err("forbidden"));
    expect((await asking(helper, ids.open)).ok).toBe(true);
  });

  it("[WB2] takes staff to the match they name, and asks them for a code when they name none", async () => {
    const answer = await asking(coach, ids.elsewhere);
    expect(answer.ok && answer.value).toMatchObject({
      courtName: "Court 2",
      chartist: "Tobias A.",
      staff: true,
    });
    expect(await asking(coach)).toEqual(err("signed_out"));
  });

  it("[PD74, WB2] tells staff what goes on elsewhere that day, names and no plan, and a helper nothing of it", async () => {
    const answer = await asking(coach, ids.elsewhere);
    expect(answer.ok && answer.value.elsewhere).toEqual(
      [ids.open, ids.waiting].map((matchId) => ({
        matchId,
        courtName: "Court 1",
        names: { A: "Noor V.", B: "Visitor red" },
        state: matchId === ids.open ? "playing" : "waiting",
        ...(matchId === ids.open ? { charting: "Rosa T." } : {}),
      })),
    );
    const there = await asking(coach, ids.open);
    expect(there.ok && there.value.elsewhere?.map(({ matchId }) => matchId)).toEqual([ids.elsewhere]);
    const byCode = await asking(helper);
    expect(byCode.ok && byCode.value).not.toHaveProperty("elsewhere");
  });

  it("[WB2] tells nothing to a wall, to nobody, and about matches that are not there", async () => {
    expect(await asking(wall)).toEqual(err("forbidden"));
    expect(await asking(undefined)).toEqual(err("signed_out"));
    expect(await asking(coach, ids.academy)).toEqual(err("unknown_match"));
    expect(await asking(coach, "' or 1=1")).toEqual(err("unknown_match"));
  });

  it("[WB2] lets the court's code speak on its own court where the phone holds an account too", async () => {
    const both = (matchId: string | null) =>
      answerCourtside(
        { principalOf: async (_, prefer) => ok(prefer === "courtside" ? helper : coach) },
        createSource(),
        { cookieHeader: undefined, matchId },
      );
    const onCourt = await both(ids.open);
    expect(onCourt.ok && onCourt.value).toMatchObject({ chartist: "Dana H.", staff: false });
    const byCode = await both(null);
    expect(byCode.ok && byCode.value).toMatchObject({ chartist: "Dana H.", staff: false });
    const elsewhere = await both(ids.elsewhere);
    expect(elsewhere.ok && elsewhere.value).toMatchObject({ chartist: "Tobias A.", staff: true });
  });

  it("[WB2] says that a code ran out when its court is gone", async () => {
    expect(await asking({ ...helper, courtId: ids.academy } as Principal)).toEqual(err("code_expired"));
  });

  it("[WB2] reads a body with exactly a code and a name", () => {
    expect(parseEnter('{"code":"ABC 234","name":"Dana H."}')).toEqual({ code: "ABC 234", name: "Dana H." });
    for (const bad of [
      "",
      "[]",
      "null",
      "{}",
      '{"code":"A"}',
      '{"code":1,"name":"x"}',
      '{"code":"a","name":"b","c":1}',
    ]) {
      expect(parseEnter(bad), bad).toBeUndefined();
    }
    expect(codeTrouble("revoked")).toBe("code_expired");
  });
});
