import type { AccountPrincipal, CourtsidePrincipal } from "@courtloom/core";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import type { Auth } from "../auth.ts";
import type { LeadLaneRef } from "../auth-store.ts";
import { createAuth } from "../create-auth.ts";
import { HAND_OVER_MS, holderOf } from "../hand-overs.ts";
import { HAND_OVERS_PER_HOLDER } from "../limits.ts";
import type { SetCookie } from "../set-cookie.ts";
import type { FlowHarness } from "./auth-flows.ts";
import type { ContractAcademy, LeadHarness } from "./contract-harness.ts";
import { cookieOf } from "./cookie-of.ts";
import { granted } from "./granted.ts";
import { type MovableClock, makeMovableClock } from "./movable-clock.ts";

export interface HandOverHarness extends FlowHarness, LeadHarness {
  /** A real academy with a day and a court, and this user as its director "Ada Finch". */
  readonly makeAcademy: (userId?: string) => Promise<ContractAcademy>;
}

const HOUR = 3_600_000;
const MINUTE = 60_000;
const SECRET = "a secret of the test, long enough to be one";

/** A phone that is in, and as whom. */
interface Phone {
  readonly by: CourtsidePrincipal | AccountPrincipal;
  readonly cookie: string;
}

/** Handing a match over, over any database. */
export const describeHandOverFlows = (name: string, open: () => Promise<HandOverHarness>): void => {
  describe(name, () => {
    let harness: HandOverHarness;
    let clock: MovableClock;
    let auth: Auth;
    let own: ContractAcademy;
    let other: ContractAcademy;
    let director: Phone;
    let serial = 0;

    const freshAddress = (): string => {
      serial += 1;
      return `203.0.113.${serial}`;
    };
    const enter = (code: string, chartist: string, cookie?: string, address = freshAddress()) =>
      auth.enterPad({ code, name: chartist, address, cookieHeader: cookie });
    const issueCourt = async (academy: ContractAcademy, hours = 10) =>
      granted(
        await auth.issueCode({
          ...{ academyId: academy.academyId, kind: "court", dayId: academy.dayId, courtId: academy.courtId },
          ...{ by: academy.memberId, expiresMs: clock.wallMs() + hours * HOUR },
        }),
      );
    const comeIn = async (code: string, chartist: string): Promise<Phone> => {
      const { principal, setCookie } = granted(await enter(code, chartist));
      if (principal.kind !== "courtside" || !setCookie) throw new Error("a session on the court");
      return { by: principal, cookie: cookieOf(setCookie) };
    };
    /** A court with a code, a phone on it that leads a match, and another phone of the same court. */
    const begin = async () => {
      const { code, codeId } = await issueCourt(own);
      const [dana, rosa] = [await comeIn(code, "Dana H."), await comeIn(code, "Rosa T.")];
      const lead = await harness.openMatch(own, holderOf(dana.by));
      return { code, codeId, dana, rosa, lead };
    };
    const make = (phone: Phone, lead: LeadLaneRef) =>
      auth.makeHandOver({
        ...{ by: phone.by, matchId: lead.matchId, laneId: lead.laneId, level: "every" },
        court: { dayId: own.dayId, courtId: own.courtId },
      });

    beforeAll(async () => {
      harness = await open();
      clock = makeMovableClock(Date.UTC(2026, 4, 30, 9));
      auth = createAuth({ ...harness, secret: SECRET, secureCookies: false, clock });
      const account = { email: "ada@curlew-reach.example", password: "tide and lines 44", name: "Ada Finch" };
      const { userId } = granted(await auth.createAccount(account));
      [own, other] = [await harness.makeAcademy(userId), await harness.makeAcademy()];
      const signedIn = granted(await auth.signIn({ ...account, address: "192.0.2.5" })).setCookie;
      const by = granted(await auth.principalOf(cookieOf(signedIn)));
      if (by.kind !== "account") throw new Error("an account");
      director = { by, cookie: cookieOf(signedIn) };
    }, 60_000);
    beforeEach(() => clock.advance(16 * MINUTE));
    afterAll(async () => harness?.close());

    it("[AU21, AU24] lets a stranger in on that court for as long as the court's code, with the lead of that match", async () => {
      const { codeId, dana, lead } = await begin();
      const { code, endsMs } = granted(await make(dana, lead));
      expect(endsMs).toBe(clock.wallMs() + HAND_OVER_MS);
      const typed = ` ${code.slice(0, 3).toLowerCase()} ${code.slice(3)} `;
      const entered = granted(await enter(typed, " Ioan  P. "));
      expect(entered).toMatchObject({
        principal: { kind: "courtside", name: "Ioan P.", dayId: own.dayId, courtId: own.courtId },
        handedOver: { matchId: lead.matchId, by: "Dana H.", level: "every" },
      });
      const cookie = cookieOf(entered.setCookie as SetCookie);
      expect(await auth.principalOf(cookie)).toEqual({ ok: true, value: entered.principal });
      const phones = await auth.activeCourtside(own.academyId, own.dayId);
      expect(phones.find((phone) => phone.name === "Ioan P.")).toMatchObject({ codeId });
      clock.advance(9 * HOUR);
      expect((await auth.principalOf(cookie)).ok).toBe(true);
      await auth.revokeCode(own.academyId, codeId);
      expect(await auth.principalOf(cookie)).toEqual({ ok: false, error: "code_expired" });
    });

    it("[AU23] tells used, ended and unknown apart, and lets who entered it enter it again", async () => {
      const { dana, lead } = await begin();
      const first = granted(await make(dana, lead)).code;
      const second = granted(await make(dana, lead)).code;
      expect(await enter(first, "Ioan P.")).toEqual({ ok: false, error: "hand_over_ended" });
      const entered = granted(await enter(second, "Ioan P."));
      const cookie = cookieOf(entered.setCookie as SetCookie);
      expect(await enter(second, "Pell O.")).toEqual({ ok: false, error: "hand_over_used" });
      const { handedOver } = entered;
      const again = await enter(second, "Ioan P.", cookie);
      expect(again).toEqual({ ok: true, value: { principal: entered.principal, handedOver } });
      const third = granted(await make(dana, lead)).code;
      clock.advance(HAND_OVER_MS - 1);
      expect(await enter(third, "")).toEqual({ ok: false, error: "bad_name" });
      clock.advance(1);
      expect(await enter(third, "Pell O.")).toEqual({ ok: false, error: "hand_over_ended" });
      const fourth = granted(await make(dana, lead)).code;
      const { matchId, laneId } = lead;
      expect(await auth.withdrawHandOver({ by: dana.by, matchId, laneId })).toBe(true);
      expect(await auth.withdrawHandOver({ by: dana.by, matchId, laneId })).toBe(false);
      expect(await enter(fourth, "Pell O.")).toEqual({ ok: false, error: "hand_over_ended" });
      expect(await enter("222222", "Pell O.")).toEqual({ ok: false, error: "unknown_code" });
      expect(await enter("0O1IL0", "Pell O.")).toEqual({ ok: false, error: "unknown_code" });
    });

    it("[AU22] ends when another lane leads, and is made by nobody but the lead", async () => {
      const { dana, rosa, lead } = await begin();
      const { code } = granted(await make(dana, lead));
      const laneId = await harness.takeOver(lead, holderOf(rosa.by));
      expect(await enter(code, "Ioan P.")).toEqual({ ok: false, error: "hand_over_ended" });
      expect(await make(dana, lead)).toEqual({ ok: false, error: "not_lead" });
      expect(await make(director, { ...lead, laneId })).toEqual({ ok: false, error: "not_lead" });
      expect((await make(rosa, { ...lead, laneId })).ok).toBe(true);
      const elsewhere = await harness.openMatch(other, holderOf(dana.by));
      expect(await make(dana, elsewhere)).toEqual({ ok: false, error: "not_lead" });
    });

    it("[AU24] keeps the session of who is on that court already, and opens another for another name", async () => {
      const { dana, rosa, lead } = await begin();
      const kept = granted(await enter(granted(await make(dana, lead)).code, "rosa t.", rosa.cookie));
      expect(kept).toEqual({ principal: rosa.by, handedOver: expect.objectContaining({ by: "Dana H." }) });
      expect((await auth.principalOf(rosa.cookie)).ok).toBe(true);
      const opened = granted(await enter(granted(await make(dana, lead)).code, "Pell O.", rosa.cookie));
      expect(opened).toMatchObject({ principal: { kind: "courtside", name: "Pell O." } });
      expect(opened.setCookie).toBeDefined();
    });

    it("[AU24] keeps an account, and gives another name on its device a session beside it", async () => {
      const { dana, lead } = await begin();
      const kept = granted(await enter(granted(await make(dana, lead)).code, "Ada Finch", director.cookie));
      expect(kept.principal).toEqual(director.by);
      expect(kept).not.toHaveProperty("setCookie");
      const beside = granted(await enter(granted(await make(dana, lead)).code, "Jo Finch", director.cookie));
      expect(beside.principal).toMatchObject({ kind: "courtside", name: "Jo Finch" });
      expect((await auth.principalOf(director.cookie)).ok).toBe(true);
    });

    it("[AU21] an account hands over under the court's latest code, and not without one", async () => {
      const academy = await harness.makeAcademy();
      const by = { ...director.by, academyId: academy.academyId } as AccountPrincipal;
      const lead = await harness.openMatch(academy, holderOf(by));
      const ask = () =>
        auth.makeHandOver({
          ...{ by, matchId: lead.matchId, laneId: lead.laneId, level: "score" },
          court: { dayId: academy.dayId, courtId: academy.courtId },
        });
      expect(await ask()).toEqual({ ok: false, error: "no_code" });
      await issueCourt(academy);
      clock.advance(1);
      const { codeId } = await issueCourt(academy);
      const { principal } = granted(await enter(granted(await ask()).code, "Ioan P."));
      expect(principal).toMatchObject({ courtId: academy.courtId });
      const [phone] = await auth.activeCourtside(academy.academyId, academy.dayId);
      expect(phone).toMatchObject({ name: "Ioan P.", codeId });
    });

    it("[AU23] ends with the court's code", async () => {
      const { codeId, dana, lead } = await begin();
      const { code } = granted(await make(dana, lead));
      await auth.revokeCode(own.academyId, codeId);
      expect(await enter(code, "Ioan P.")).toEqual({ ok: false, error: "hand_over_ended" });
    });

    it("[AU25] counts wrong codes together with those of courts, and no right ones", async () => {
      const { code, dana, lead } = await begin();
      const handed = granted(await make(dana, lead)).code;
      const address = "192.0.2.60";
      for (let at = 0; at < 9; at += 1) await enter("222222", "Ioan P.", undefined, address);
      expect((await enter(code, "Ioan P.", undefined, address)).ok).toBe(true);
      expect((await enter(handed, "Ioan P.", undefined, address)).ok).toBe(true);
      for (let at = 0; at < 3; at += 1) {
        expect(await enter(handed, "Pell O.", undefined, address)).toMatchObject({ error: "hand_over_used" });
      }
      expect(await enter("222222", "Ioan P.", undefined, address)).toMatchObject({ error: "unknown_code" });
      expect(await enter(handed, "Ioan P.", undefined, address)).toEqual({
        ok: false,
        error: "too_many_tries",
      });
    });

    it("[AU25] stops a phone that makes codes without end", async () => {
      const { dana, lead } = await begin();
      for (let at = 0; at < HAND_OVERS_PER_HOLDER; at += 1) expect((await make(dana, lead)).ok).toBe(true);
      expect(await make(dana, lead)).toEqual({ ok: false, error: "too_many_tries" });
      clock.advance(15 * MINUTE);
      expect((await make(dana, lead)).ok).toBe(true);
    });

    it("[AU21] keeps no hand-over code in clear, and a court code beside it as ever", async () => {
      const { code: court, dana, lead } = await begin();
      const { code } = granted(await make(dana, lead));
      expect(await harness.everything()).not.toContain(code);
      expect(granted(await enter(court, "Pell O."))).not.toHaveProperty("handedOver");
    });
  });
};
