import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import type { Auth } from "../auth.ts";
import { CODE_ALPHABET } from "../code-text.ts";
import { createAuth } from "../create-auth.ts";
import type { SetCookie } from "../set-cookie.ts";
import type { FlowHarness } from "./auth-flows.ts";
import type { ContractAcademy } from "./contract-harness.ts";
import { cookieOf } from "./cookie-of.ts";
import { granted } from "./granted.ts";
import { type MovableClock, makeMovableClock } from "./movable-clock.ts";

export interface CourtsideHarness extends FlowHarness {
  /** A real academy with a day and a court; each call makes another. */
  readonly makeAcademy: () => Promise<Omit<ContractAcademy, "userId">>;
}

const HOUR = 3_600_000;
const MINUTE = 60_000;
const SECRET = "a secret of the test, long enough to be one";

/** Codes and the sessions that come from them, over any database. */
export const describeCourtsideFlows = (name: string, open: () => Promise<CourtsideHarness>): void => {
  describe(name, () => {
    let harness: CourtsideHarness;
    let clock: MovableClock;
    let auth: Auth;
    let own: Omit<ContractAcademy, "userId">;
    let other: Omit<ContractAcademy, "userId">;
    let serial = 0;

    const make = (secret = SECRET): Auth => createAuth({ ...harness, secret, secureCookies: false, clock });
    const issueCourt = async (academy = own, hours = 10) =>
      granted(
        await auth.issueCode({
          academyId: academy.academyId,
          kind: "court",
          dayId: academy.dayId,
          courtId: academy.courtId,
          by: academy.memberId,
          expiresMs: clock.wallMs() + hours * HOUR,
        }),
      );
    const issueWall = async () =>
      granted(
        await auth.issueCode({
          academyId: own.academyId,
          kind: "wall",
          dayId: own.dayId,
          by: own.memberId,
          expiresMs: clock.wallMs() + HOUR,
        }),
      );
    const freshAddress = (): string => {
      serial += 1;
      return `203.0.113.${serial}`;
    };
    const enter = (code: string, chartist = "Wren", address = freshAddress()) =>
      auth.enterWithCode({ code, name: chartist, address });
    const wrongCode = (good: string): string =>
      `${CODE_ALPHABET[(CODE_ALPHABET.indexOf(good[0] ?? "") + 1) % CODE_ALPHABET.length]}${good.slice(1)}`;

    beforeAll(async () => {
      harness = await open();
      clock = makeMovableClock(Date.UTC(2026, 4, 30, 9));
      auth = make();
      [own, other] = [await harness.makeAcademy(), await harness.makeAcademy()];
    }, 60_000);
    beforeEach(() => clock.advance(16 * MINUTE));
    afterAll(async () => harness?.close());

    it("[AU11] lets a chartist in with a court's code, typed as people type", async () => {
      const { code } = await issueCourt();
      const typed = ` ${code.slice(0, 3).toLowerCase()}-${code.slice(3)} `;
      const { setCookie, principal } = granted(await enter(typed, "  Wren   Tidewater "));
      expect(principal).toEqual({
        kind: "courtside",
        academyId: own.academyId,
        sessionId: principal.sessionId,
        name: "Wren Tidewater",
        dayId: own.dayId,
        courtId: own.courtId,
      });
      expect(setCookie.header).toMatch(/^courtloom_courtside=.*HttpOnly; SameSite=Lax$/);
      expect(await auth.principalOf(cookieOf(setCookie))).toEqual({ ok: true, value: principal });
    });

    it("[AU11] lets a wall in without a name, as a wall of that day only", async () => {
      const { code } = await issueWall();
      const { setCookie, principal } = granted(await enter(code, ""));
      expect(principal).toEqual({
        kind: "wall",
        academyId: own.academyId,
        sessionId: principal.sessionId,
        dayId: own.dayId,
      });
      expect(await auth.principalOf(cookieOf(setCookie))).toEqual({ ok: true, value: principal });
    });

    it("[AU11] asks for a court exactly when the code is a court's, and for a time to come", async () => {
      const base = { academyId: own.academyId, dayId: own.dayId, by: own.memberId };
      const expiresMs = clock.wallMs() + HOUR;
      expect(await auth.issueCode({ ...base, kind: "court", expiresMs })).toEqual({
        ok: false,
        error: "court_needed",
      });
      expect(await auth.issueCode({ ...base, kind: "wall", courtId: own.courtId, expiresMs })).toEqual({
        ok: false,
        error: "court_needed",
      });
      expect(await auth.issueCode({ ...base, kind: "wall", expiresMs: clock.wallMs() })).toEqual({
        ok: false,
        error: "already_past",
      });
    });

    it.each(["", " \t", "x".repeat(41), "a\u0000b", "a\u202Eb"])(
      "[AU11] refuses the name %j",
      async (chartist) => {
        const { code } = await issueCourt();
        expect(await enter(code, chartist)).toEqual({ ok: false, error: "bad_name" });
      },
    );

    it("[AU12] reads the day's codes out again, and no other academy's", async () => {
      const day = await harness.makeAcademy();
      const first = await issueCourt(day);
      clock.advance(1);
      const second = await issueCourt(day);
      const listed = await auth.activeCodes(day.academyId, day.dayId);
      expect(listed.map(({ codeId, code }) => ({ codeId, code }))).toEqual([first, second]);
      expect(await auth.activeCodes(other.academyId, day.dayId)).toEqual([]);
      const [unreadable] = await make(`${SECRET}!`).activeCodes(day.academyId, day.dayId);
      expect(unreadable?.code).toBeUndefined();
    });

    it("[AU12] tells expired from revoked from unknown", async () => {
      const [brief, taken, good] = [await issueCourt(own, 1), await issueCourt(), await issueCourt()];
      expect(await auth.revokeCode(own.academyId, taken.codeId)).toBe(true);
      clock.advance(HOUR);
      expect(await enter(brief.code)).toEqual({ ok: false, error: "expired" });
      expect(await enter(taken.code)).toEqual({ ok: false, error: "revoked" });
      expect(await enter(wrongCode(good.code))).toEqual({ ok: false, error: "unknown_code" });
      for (const nonsense of ["", "0O1IL0", "x".repeat(10_000), "ABCDEF\u0000"]) {
        expect(await enter(nonsense)).toEqual({ ok: false, error: "unknown_code" });
      }
    });

    it("[AU13] ends sessions with their code, and says that the code ended", async () => {
      const [brief, taken] = [await issueCourt(own, 1), await issueCourt()];
      const [one, two] = [granted(await enter(brief.code)), granted(await enter(taken.code))];
      const gone = { ok: false, error: "code_expired" };
      await auth.revokeCode(own.academyId, taken.codeId);
      expect(await auth.principalOf(cookieOf(two.setCookie))).toEqual(gone);
      clock.advance(HOUR - 1);
      expect((await auth.principalOf(cookieOf(one.setCookie))).ok).toBe(true);
      clock.advance(1);
      expect(await auth.principalOf(cookieOf(one.setCookie))).toEqual(gone);
      expect(one.setCookie.options.maxAge).toBeGreaterThan(HOUR / 1000);
    });

    it("[AU13] ends one phone and leaves the others, by the desk or by the phone itself", async () => {
      const { code } = await issueCourt();
      const sessions = [granted(await enter(code)), granted(await enter(code)), granted(await enter(code))];
      const [first, second, third] = sessions.map(({ setCookie }) => cookieOf(setCookie));
      const id = sessions[0]?.principal.sessionId ?? "";
      expect(await auth.revokeCourtside(own.academyId, id)).toBe(true);
      expect((await auth.leaveCourtside(second)).setCookie.options.maxAge).toBe(0);
      const states = await Promise.all([first, second, third].map((cookie) => auth.principalOf(cookie)));
      expect(states.map(({ ok }) => ok)).toEqual([false, false, true]);
      const listed = await auth.activeCourtside(own.academyId, own.dayId);
      expect(listed.map(({ sessionId }) => sessionId)).toContain(sessions[2]?.principal.sessionId);
      expect(listed.map(({ sessionId }) => sessionId)).not.toContain(id);
    });

    it("[AU14] crosses no academy: neither codes nor phones of another can be ended or listed", async () => {
      const { code, codeId } = await issueCourt();
      const { setCookie, principal } = granted(await enter(code));
      expect(await auth.revokeCode(other.academyId, codeId)).toBe(false);
      expect(await auth.revokeCourtside(other.academyId, principal.sessionId)).toBe(false);
      expect(await auth.activeCourtside(other.academyId, own.dayId)).toEqual([]);
      expect(granted(await auth.principalOf(cookieOf(setCookie))).academyId).toBe(own.academyId);
    });

    it("[AU13] keeps neither a code nor a phone's token in clear", async () => {
      const { code } = await issueCourt();
      const { setCookie } = granted(await enter(code));
      const kept = await harness.everything();
      expect(kept).not.toContain(setCookie.value);
      expect(kept).not.toContain(code);
      const forged: SetCookie = { ...setCookie, value: `${setCookie.value.slice(0, -1)}!` };
      expect(await auth.principalOf(cookieOf(forged))).toEqual({ ok: false, error: "signed_out" });
    });

    it("[AU19] goes on under another secret with phones that are in, and knows no code any more", async () => {
      const { code } = await issueCourt();
      const { setCookie } = granted(await enter(code));
      const changed = make(`${SECRET}!`);
      expect((await changed.principalOf(cookieOf(setCookie))).ok).toBe(true);
      const entered = await changed.enterWithCode({ code, name: "Wren", address: freshAddress() });
      expect(entered).toEqual({ ok: false, error: "unknown_code" });
    });

    it("[AU15] stops a network after ten wrong codes in 15 minutes, and only that one", async () => {
      const { code } = await issueCourt();
      const bad = wrongCode(code);
      const address = "2001:db8:1:2::1";
      for (let at = 0; at < 10; at += 1) {
        expect(await enter(bad, "Wren", `2001:db8:1:2::${at}`)).toEqual({ ok: false, error: "unknown_code" });
      }
      expect(await enter(code, "Wren", address)).toEqual({ ok: false, error: "too_many_tries" });
      expect((await enter(code, "Wren", "2001:db8:1:3::1")).ok).toBe(true);
      clock.advance(15 * MINUTE);
      expect((await enter(code, "Wren", address)).ok).toBe(true);
    });

    it("[AU15] does not count who comes in, so that a whole club may share an address", async () => {
      const { code } = await issueCourt();
      for (let at = 0; at < 15; at += 1) expect((await enter(code, "Wren", "192.0.2.77")).ok).toBe(true);
    });

    it("[AU15] stops everybody after 600 wrong codes from anywhere, until the window ends", async () => {
      const { code } = await issueCourt();
      const bad = wrongCode(code);
      const from = (at: number): string => `198.18.${Math.floor(at / 250)}.${at % 250}`;
      for (let at = 0; at < 600; at += 1) await enter(bad, "Wren", from(at));
      expect(await enter(code, "Wren", "192.0.2.99")).toEqual({ ok: false, error: "too_many_tries" });
      clock.advance(15 * MINUTE);
      expect((await enter(code, "Wren", "192.0.2.99")).ok).toBe(true);
    });

    it("[AU16] keeps an account and a code on one phone apart: one speaks, never a mixture", async () => {
      const account = { email: "guardian@curlew-reach.example", password: "tide and lines 44", name: "Jo" };
      const { userId } = granted(await auth.createAccount(account));
      await harness.appoint(userId, false);
      const signedIn = granted(await auth.signIn({ ...account, address: "192.0.2.5" })).setCookie;
      const { code, codeId } = await issueCourt();
      const courtside = granted(await enter(code)).setCookie;
      const both = cookieOf(signedIn, courtside);
      const kindOf = async (header: string, prefer?: "account" | "courtside") =>
        granted(await auth.principalOf(header, prefer)).kind;
      expect(await kindOf(both)).toBe("account");
      expect(await kindOf(both, "account")).toBe("account");
      expect(await kindOf(both, "courtside")).toBe("courtside");
      expect(await kindOf(cookieOf(signedIn), "courtside")).toBe("account");
      expect(await kindOf(cookieOf(courtside), "account")).toBe("courtside");
      await auth.signOut(both);
      expect(await kindOf(both, "account")).toBe("courtside");
      await auth.revokeCode(own.academyId, codeId);
      for (const prefer of ["account", "courtside"] as const) {
        expect(await auth.principalOf(both, prefer)).toEqual({ ok: false, error: "code_expired" });
      }
    });
  });
};
