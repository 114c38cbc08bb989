import { REFUSALS } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { COURTSIDE_REFUSALS } from "./courtside.ts";
import { PLAIN_HTTP_NOTICE, padNotices } from "./pad-notices.ts";
import type { PadSnapshot } from "./pad-session.ts";
import { parseSettings, USUAL_SETTINGS } from "./pad-settings.ts";
import { courtsideWords, REFUSAL_WORDS } from "./refusal-words.ts";

const snapshot = (over: Partial<PadSnapshot["status"]>, durable = true): PadSnapshot => ({
  record: { laneId: "mine", epoch: 1 } as PadSnapshot["record"],
  status: { signal: "open", unsent: 0, rejected: [], unstored: false, ...over } as PadSnapshot["status"],
  log: [],
  whole: { log: [], view: undefined },
  epoch: 1,
  view: undefined,
  level: "every",
  durable,
  otherUnsent: 0,
  charts: false,
});

describe("refusals in words", () => {
  it("[PD18] each say that everything is on this phone, in whole sentences, and leave something to do", () => {
    for (const code of REFUSALS) {
      const { text, help } = REFUSAL_WORDS[code];
      expect([code, text]).toEqual([
        code,
        expect.stringMatching(/^[A-Z].*\. All is on this phone\.( .*\.)?$/),
      ]);
      const byItself = /by itself|director/.test(text);
      expect([code, help === "none"]).toEqual([code, byItself]);
    }
  });

  it("[PD18] have a sentence each where a court is entered", () => {
    const said = COURTSIDE_REFUSALS.map((code) => courtsideWords({ ok: false, code, afterMs: 1_500 }));
    expect(new Set(said).size).toBe(COURTSIDE_REFUSALS.length);
    for (const text of said) expect(text).toMatch(/^[A-Z].*\.$/);
    expect(said.join(" ")).toContain("Try again in 2 s.");
  });

  it("[PD18] show as one notice with what to do; who leads is the screen's to say", () => {
    expect(padNotices(snapshot({ signal: "refused", refusal: "code_expired" }))).toEqual([
      { id: "refused", text: REFUSAL_WORDS.code_expired.text, help: "enterCode" },
    ]);
    const leader = { by: "Dana H.", heardMs: 1, serverMs: 2, takeOverInMs: 9 };
    expect(padNotices(snapshot({ signal: "refused", refusal: "lead_taken", leader }))).toEqual([]);
    const expired = padNotices(snapshot({ signal: "refused", refusal: "code_expired", leader }));
    expect(expired.map(({ id }) => id)).toEqual(["refused"]);
    expect(padNotices(snapshot({}))).toEqual([]);
  });

  it("[PD18] do not claim that points are stored where they are not", () => {
    const lost = padNotices(snapshot({ signal: "noSignal" }, false));
    expect(lost.map(({ id }) => id)).toEqual(["noSignal", "unstored"]);
    expect(lost[0]?.text).not.toContain("on this phone");
  });
});

describe("the notice about plain http", () => {
  it("[PD21] says what is missing and what to do, until it was put away on this phone", () => {
    expect(PLAIN_HTTP_NOTICE.text).toMatch(/screen may go dark.*may close this page.*Keep it open\.$/);
    expect(parseSettings(JSON.stringify({ ...USUAL_SETTINGS, knowsPlainHttp: true })).knowsPlainHttp).toBe(
      true,
    );
    expect(parseSettings('{"knowsPlainHttp":"yes"}').knowsPlainHttp).toBe(false);
  });
});
