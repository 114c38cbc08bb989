import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import type { AccountsDatabase } from "../accounts-database.ts";
import type { Auth } from "../auth.ts";
import type { AuthStore } from "../auth-store.ts";
import { createAuth } from "../create-auth.ts";
import type { SetCookie } from "../set-cookie.ts";
import { cookieOf } from "./cookie-of.ts";
import { granted } from "./granted.ts";
import { type MovableClock, makeMovableClock } from "./movable-clock.ts";

export interface FlowHarness {
  readonly accounts: AccountsDatabase;
  readonly store: AuthStore;
  /** Makes a user the director of the real academy (made with the first call) or of the demonstration. */
  readonly appoint: (userId: string, isDemo: boolean) => Promise<void>;
  /** Every value that the database holds, as text. */
  readonly everything: () => Promise<string>;
  readonly close: () => Promise<void>;
}

const HOUR = 3_600_000;
const MINUTE = 60_000;
const SECRET = "a secret of the test, long enough to be one";
const EMAIL = "ada.finch@curlew-reach.example";
const PASSWORD = "tide tables and long rallies";
const HOME = "192.0.2.10";

/** Accounts from set-up to sign-out, over any database. */
export const describeAuthFlows = (name: string, open: () => Promise<FlowHarness>): void => {
  describe(name, () => {
    let harness: FlowHarness;
    let clock: MovableClock;
    let auth: Auth;
    let directorId: string;

    const make = (secret = SECRET): Auth =>
      createAuth({
        accounts: harness.accounts,
        store: harness.store,
        secret,
        secureCookies: false,
        clock,
      });
    const signIn = async (cookieHeader?: string): Promise<SetCookie> =>
      granted(await auth.signIn({ email: EMAIL, password: PASSWORD, address: HOME, cookieHeader })).setCookie;
    const isIn = async (cookie: SetCookie): Promise<boolean> => (await auth.principalOf(cookieOf(cookie))).ok;

    beforeAll(async () => {
      harness = await open();
      clock = makeMovableClock(Date.UTC(2026, 4, 30, 9));
      auth = make();
      const account = { email: EMAIL.toUpperCase(), password: PASSWORD, name: "Ada Finch" };
      const broken = granted(await auth.createDirector({ ...account, password: "another long password" }));
      directorId = granted(await auth.createDirector(account)).userId;
      expect(directorId).toBe(broken.userId);
      await harness.appoint(directorId, false);
    }, 60_000);
    beforeEach(() => clock.advance(HOUR));
    afterAll(async () => harness?.close());

    it("[AU1] makes the first director once, and lets a broken-off set-up be repeated", async () => {
      const second = { email: "eve@curlew-reach.example", password: PASSWORD, name: "Eve" };
      expect(await auth.createDirector(second)).toEqual({ ok: false, error: "already_set_up" });
      expect(await isIn(await signIn())).toBe(true);
    });

    it("[AU1] makes one account per e-mail, however it is written", async () => {
      expect(await auth.createAccount({ email: ` ${EMAIL} `, password: PASSWORD, name: "Ada" })).toEqual({
        ok: false,
        error: "email_taken",
      });
    });

    it.each([
      ["bad_email", { email: "ada", password: PASSWORD, name: "Ada" }],
      ["bad_name", { email: "b@curlew-reach.example", password: PASSWORD, name: " " }],
      ["password_too_short", { email: "b@curlew-reach.example", password: "seven77", name: "B" }],
      ["password_too_long", { email: "b@curlew-reach.example", password: "xy z".repeat(33), name: "B" }],
      ["password_too_common", { email: "b@curlew-reach.example", password: "Password123!", name: "B" }],
    ] as const)("[AU3] refuses an account with %s", async (error, account) => {
      expect(await auth.createAccount(account)).toEqual({ ok: false, error });
    });

    it("[AU4] tells who is signed in, from the database each time", async () => {
      const cookie = await signIn();
      expect(await auth.principalOf(cookieOf(cookie))).toEqual({
        ok: true,
        value: {
          kind: "account",
          ...(await harness.store.membershipOf(directorId)),
          userId: directorId,
        },
      });
      await auth.endSessionsOf(directorId);
      expect(await auth.principalOf(cookieOf(cookie))).toEqual({ ok: false, error: "signed_out" });
    });

    it("[AU4] knows no principal without a cookie, nor for an account that belongs to no academy", async () => {
      const account = { email: "lone@curlew-reach.example", password: PASSWORD, name: "Lone" };
      await auth.createAccount(account);
      const { setCookie } = granted(await auth.signIn({ ...account, address: HOME }));
      for (const header of [undefined, "", "a=b", "courtloom_account=", cookieOf(setCookie)]) {
        expect(await auth.principalOf(header)).toEqual({ ok: false, error: "signed_out" });
      }
    });

    it("[AU5] keeps only hashes: neither token, cookie, password nor address is anywhere in the database", async () => {
      const { setCookie } = granted(await auth.signIn({ email: EMAIL, password: PASSWORD, address: HOME }));
      const [token = ""] = setCookie.value.split(".");
      expect(token.length).toBeGreaterThanOrEqual(32);
      const kept = await harness.everything();
      expect(kept).toContain(EMAIL);
      expect(kept).toContain("$argon2id$v=19$m=19456,t=2,p=1$");
      for (const secret of [token, setCookie.value, PASSWORD, HOME]) expect(kept).not.toContain(secret);
    });

    it("[AU5] gives a new token at each sign-in and ends the one the device had", async () => {
      const first = await signIn();
      const second = await signIn(cookieOf(first));
      expect(second.value).not.toBe(first.value);
      expect(await isIn(first)).toBe(false);
      expect(await isIn(second)).toBe(true);
    });

    it("[AU6] refuses a cookie that was tampered with, or signed with another secret", async () => {
      const cookie = await signIn();
      const { value } = cookie;
      const [token = "", signature = ""] = value.split(".");
      const flipped = `${value[0] === "a" ? "b" : "a"}${value.slice(1)}`;
      for (const forged of [flipped, token, `${token}.`, `${token}.${signature.slice(1)}A`, "%"]) {
        expect(await isIn({ ...cookie, value: forged })).toBe(false);
      }
      expect((await make(`${SECRET}!`).principalOf(cookieOf(cookie))).ok).toBe(false);
      expect(await isIn(cookie)).toBe(true);
    });

    it("[AU7] ends a session after 12 hours without use, and only then", async () => {
      const used = await signIn();
      const idle = await signIn();
      clock.advance(12 * HOUR - MINUTE);
      expect(await isIn(used)).toBe(true);
      clock.advance(2 * MINUTE);
      expect(await isIn(used)).toBe(true);
      expect(await isIn(idle)).toBe(false);
    });

    it("[AU7] ends a session after 14 days, used or not", async () => {
      const cookie = await signIn();
      for (let at = 0; at < 14 * 3 - 1; at += 1) {
        clock.advance(8 * HOUR);
        expect(await isIn(cookie)).toBe(true);
      }
      clock.advance(8 * HOUR - 1);
      expect(await isIn(cookie)).toBe(true);
      clock.advance(1);
      expect(await isIn(cookie)).toBe(false);
    });

    it("[AU7] signs out here and nowhere else", async () => {
      const [phone, laptop] = [await signIn(), await signIn()];
      const { setCookie } = await auth.signOut(cookieOf(phone));
      expect(setCookie).toMatchObject({ name: phone.name, value: "", options: { maxAge: 0 } });
      expect(await isIn(phone)).toBe(false);
      expect(await isIn(laptop)).toBe(true);
      expect((await auth.signOut(undefined)).setCookie.options.maxAge).toBe(0);
    });

    it("[AU8] lets five wrong passwords pass in 15 minutes, then none, right or wrong", async () => {
      const address = "198.51.100.7";
      const attempt = (password: string, from = address) =>
        auth.signIn({ email: EMAIL, password, address: from });
      for (let at = 0; at < 5; at += 1) {
        expect(await attempt("not the password")).toEqual({ ok: false, error: "wrong_credentials" });
      }
      expect(await attempt(PASSWORD)).toEqual({ ok: false, error: "too_many_tries" });
      expect((await attempt(PASSWORD, "198.51.100.8")).ok).toBe(true);
      clock.advance(15 * MINUTE);
      expect((await attempt(PASSWORD)).ok).toBe(true);
    });

    it("[AU8] counts tries at the same moment, and an e-mail that nobody has alike", async () => {
      const tries = await Promise.all(
        Array.from({ length: 12 }, () =>
          auth.signIn({ email: "nobody@curlew-reach.example", password: PASSWORD, address: HOME }),
        ),
      );
      const errors = tries.map((tried) => (tried.ok ? "in" : tried.error));
      expect(errors.filter((error) => error === "wrong_credentials")).toHaveLength(5);
      expect(errors.filter((error) => error === "too_many_tries")).toHaveLength(7);
    });

    it("[AU8] stops guessing at one account from many networks, after 100 tries", async () => {
      const guess = (at: number) =>
        auth.signIn({ email: "guessed@curlew-reach.example", password: "x", address: `198.18.0.${at}` });
      const tries = await Promise.all(Array.from({ length: 102 }, (_, at) => guess(at)));
      const errors = tries.map((tried) => (tried.ok ? "in" : tried.error));
      expect(errors.filter((error) => error === "too_many_tries").length).toBeGreaterThanOrEqual(2);
      expect(await guess(200)).toEqual({ ok: false, error: "too_many_tries" });
      clock.advance(15 * MINUTE);
      expect(await guess(200)).toEqual({ ok: false, error: "wrong_credentials" });
    }, 20_000);

    it("[AU8] forgets the tries of who then signs in", async () => {
      const address = "203.0.113.5";
      for (let round = 0; round < 3; round += 1) {
        for (let at = 0; at < 4; at += 1) {
          await auth.signIn({ email: EMAIL, password: "not the password", address });
        }
        expect((await auth.signIn({ email: EMAIL, password: PASSWORD, address })).ok).toBe(true);
      }
    });

    it("[AU2] changes a password only for who knows it, and ends every other session", async () => {
      const account = { email: "bo@curlew-reach.example", password: PASSWORD, name: "Bo" };
      await auth.createAccount(account);
      const [here, there] = [
        granted(await auth.signIn({ ...account, address: HOME })).setCookie,
        granted(await auth.signIn({ ...account, address: HOME })).setCookie,
      ];
      const change = (cookieHeader: string | undefined, current: string, next: string) =>
        auth.changePassword({ cookieHeader, current, next, address: HOME });
      const next = "a quite different sentence";
      expect(await change(undefined, PASSWORD, next)).toEqual({ ok: false, error: "signed_out" });
      expect(await change(cookieOf(here), "wrong password", next)).toEqual({
        ok: false,
        error: "wrong_credentials",
      });
      expect(await change(cookieOf(here), PASSWORD, "short")).toEqual({
        ok: false,
        error: "password_too_short",
      });
      const changed = granted(await change(cookieOf(here), PASSWORD, next));
      expect((await change(cookieOf(there), next, "yet another sentence")).ok).toBe(false);
      expect((await auth.signIn({ ...account, address: HOME })).ok).toBe(false);
      expect((await change(cookieOf(changed.setCookie), next, "yet another sentence")).ok).toBe(true);
    });

    it("[AU10] enters the demonstration without a password, and nothing else that way", async () => {
      expect(await auth.enterDemo()).toEqual({ ok: false, error: "no_demo" });
      const guide = granted(await auth.createAccount({ email: "demo@curlew-reach.example", name: "Guide" }));
      await harness.appoint(guide.userId, true);
      const { setCookie, userId } = granted(await auth.enterDemo());
      expect(userId).toBe(guide.userId);
      const principal = granted(await auth.principalOf(cookieOf(setCookie)));
      const own = await harness.store.membershipOf(directorId);
      expect(principal).toMatchObject({ kind: "account", userId: guide.userId, role: "director" });
      expect(principal.academyId).not.toBe(own?.academyId);
      expect(await auth.signIn({ email: "demo@curlew-reach.example", password: "", address: HOME })).toEqual({
        ok: false,
        error: "wrong_credentials",
      });
      await harness.appoint(guide.userId, false);
      expect(await auth.enterDemo()).toEqual({ ok: false, error: "no_demo" });
    });
  });
};
