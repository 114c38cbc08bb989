import { describe, expect, it } from "vitest";
import { createAuth } from "./create-auth.ts";
import { readCookie } from "./read-cookie.ts";
import { makeSetCookie } from "./set-cookie.ts";
import { granted } from "./testing/granted.ts";
import { createMemoryAuthStore } from "./testing/memory-auth-store.ts";
import { makeMovableClock } from "./testing/movable-clock.ts";

const SECRET = "a secret of the test, long enough to be one";

describe("cookies", () => {
  it.each([
    [true, "__Host-courtloom_account", "__Host-courtloom_courtside"],
    [false, "courtloom_account", "courtloom_courtside"],
  ])("[AU6] on https %s have their own names and are closed to scripts", async (secure, first, second) => {
    const auth = createAuth({
      accounts: { kind: "memory", tables: { user: [], session: [], account: [], verification: [] } },
      store: createMemoryAuthStore(),
      secret: SECRET,
      secureCookies: secure,
      clock: makeMovableClock(0),
    });
    const account = { email: "ada@curlew-reach.example", password: "tide and lines 44", name: "Ada" };
    await auth.createAccount(account);
    const signedIn = granted(await auth.signIn({ ...account, address: "192.0.2.1" })).setCookie;
    const issued = granted(
      await auth.issueCode({ academyId: "a", kind: "wall", dayId: "d", by: "m", expiresMs: 3_600_000 }),
    );
    const wall = granted(await auth.enterWithCode({ code: issued.code, name: "", address: "192.0.2.1" }));
    const shared = { httpOnly: true, sameSite: "lax", path: "/", secure };
    expect(signedIn).toMatchObject({ name: first, options: { ...shared, maxAge: 14 * 24 * 3600 } });
    expect(wall.setCookie).toMatchObject({ name: second, options: shared });
    for (const { header } of [signedIn, wall.setCookie]) {
      expect(header).toMatch(/; Path=\/; Max-Age=\d+; HttpOnly; SameSite=Lax/);
      expect(header.includes("; Secure")).toBe(secure);
      expect(header).not.toContain("Domain");
    }
  });

  it("[AU6] come back as they were given", () => {
    const { header } = makeSetCookie("n", "a+b/c=.d;e", { secure: true, maxAge: 1 });
    const [pair = ""] = header.split("; ");
    expect(readCookie(`x=1; ${pair}; nn=2`, "n")).toBe("a+b/c=.d;e");
    expect(readCookie("n=first; n=second", "n")).toBe("first");
    expect(readCookie("n=%", "n")).toBeUndefined();
    expect(readCookie(undefined, "n")).toBeUndefined();
  });
});
