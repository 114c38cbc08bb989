import { err, ok, type Principal } from "@courtloom/core";
import { describe, expect, it } from "vitest";
import { createSource, ids } from "../testing/source.ts";
import { answerCourtWords } from "./answer-court-words.ts";

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
const SAID = { words: "Build first.", sentence: "", question: "" };

/** A device whose account and court's code are these. */
const asking = async (account?: Principal, code?: Principal, matchId: string | null = ids.open) => {
  let asked = 0;
  const answer = await answerCourtWords(
    {
      auth: {
        principalOf: async (_cookie, speaks) => {
          const found = speaks === "courtside" ? (code ?? account) : (account ?? code);
          return found ? ok(found) : err("signed_out");
        },
      },
      source: createSource(),
      courtWords: async () => {
        asked += 1;
        return ok(SAID);
      },
    },
    { cookieHeader: undefined, matchId },
  );
  return { answer, asked };
};

describe("the plan's words for a pad", () => {
  it("[CM7] go to a signed-in member", async () => {
    expect(await asking(coach)).toEqual({ answer: ok({ said: SAID }), asked: 1 });
  });

  it("[CM4, CM7] are refused to a code, also where the same device holds an account, and nothing is looked up", async () => {
    for (const [account, code] of [
      [undefined, helper],
      [undefined, wall],
      [coach, helper],
    ] as const)
      expect(await asking(account, code)).toEqual({ answer: err("forbidden"), asked: 0 });
    expect(await asking()).toEqual({ answer: err("signed_out"), asked: 0 });
    expect(await asking(coach, undefined, null)).toEqual({ answer: err("bad_shape"), asked: 0 });
  });

  it("[CM4] of a match elsewhere are the account's to ask for, as its charting is", async () => {
    expect((await asking(coach, helper, ids.elsewhere)).asked).toBe(1);
  });
});
