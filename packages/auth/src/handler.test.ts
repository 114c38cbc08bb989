import { beforeEach, describe, expect, it } from "vitest";
import type { Auth } from "./auth.ts";
import { createAuth } from "./create-auth.ts";
import { createMemoryAuthStore } from "./testing/memory-auth-store.ts";
import { makeMovableClock } from "./testing/movable-clock.ts";

const ACCOUNT = { email: "ada@curlew-reach.example", password: "tide and lines 44", name: "Ada" };
const SIGN_IN = "/api/auth/sign-in/email";

const makeAuth = (baseUrl?: string): Auth =>
  createAuth({
    accounts: { kind: "memory", tables: { user: [], session: [], account: [], verification: [] } },
    store: createMemoryAuthStore(),
    secret: "a secret of the test, long enough to be one",
    secureCookies: false,
    ...(baseUrl === undefined ? {} : { baseUrl }),
    addressOf: (headers) => headers.get("x-front-door-address") ?? undefined,
    clock: makeMovableClock(0),
  });

const post = (path: string, body: unknown, headers: Record<string, string> = {}): Request =>
  new Request(`http://10.0.0.5:3000${path}`, {
    method: "POST",
    headers: { "content-type": "application/json", origin: "http://10.0.0.5:3000", ...headers },
    body: typeof body === "string" ? body : JSON.stringify(body),
  });

describe("what a browser reaches", () => {
  let auth: Auth;
  beforeEach(async () => {
    auth = makeAuth();
    await auth.createAccount(ACCOUNT);
  });
  const statusOf = async (request: Request): Promise<number> => (await auth.handler(request)).status;

  it("[AU18] signs in and out, and stores nothing on the way", async () => {
    const response = await auth.handler(post(SIGN_IN, ACCOUNT));
    expect(response.status).toBe(200);
    expect(response.headers.get("cache-control")).toBe("no-store");
    expect(await response.json()).toEqual({ ok: true });
    const [cookie = ""] = response.headers.getSetCookie();
    expect(cookie).toMatch(/^courtloom_account=[^;]+; Path=\/; Max-Age=1209600; HttpOnly; SameSite=Lax$/);
    const [pair = ""] = cookie.split(";");
    const out = await auth.handler(post("/api/auth/sign-out", "", { cookie: pair }));
    expect(out.headers.getSetCookie()[0]).toMatch(/^courtloom_account=; Path=\/; Max-Age=0/);
  });

  it.each([
    "/api/auth/sign-up/email",
    "/api/auth/get-session",
    "/api/auth/update-user",
    "/api/auth/list-sessions",
    "/api/auth/request-password-reset",
    "/api/auth/delete-user",
    "/api/auth/open-session",
    "/api/auth/sign-in/email/",
    "/api/auth/ok",
    "/",
  ])("[AU18] has nothing at %s", async (path) => {
    expect(await statusOf(post(path, ACCOUNT))).toBe(404);
    expect(await statusOf(new Request(`http://10.0.0.5:3000${path}`))).toBe(404);
  });

  it("[AU18] does nothing for a GET", async () => {
    expect(await statusOf(new Request(`http://10.0.0.5:3000${SIGN_IN}`))).toBe(404);
    expect(await statusOf(new Request("http://10.0.0.5:3000/api/auth/sign-out"))).toBe(404);
  });

  it.each(["http://evil.test", "http://10.0.0.5", "https://10.0.0.5:3000.evil.test", "null", ""])(
    "[AU18] refuses the origin %j",
    async (origin) => {
      expect(await statusOf(post(SIGN_IN, ACCOUNT, { origin }))).toBe(403);
      expect(await statusOf(post("/api/auth/sign-out", "", { origin }))).toBe(403);
    },
  );

  it("[AU18] holds to the address people open, where that is fixed, whatever host is claimed", async () => {
    auth = makeAuth("https://club.example/");
    expect(await statusOf(post(SIGN_IN, ACCOUNT, { origin: "https://club.example" }))).toBe(401);
    expect(await statusOf(post(SIGN_IN, ACCOUNT))).toBe(403);
    expect(await statusOf(post(SIGN_IN, ACCOUNT, { origin: "http://club.example" }))).toBe(403);
  });

  it.each([
    [415, "{}", "text/plain"],
    [415, "email=a", "application/x-www-form-urlencoded"],
    [400, "{", "application/json"],
    [400, "null", "application/json"],
    [400, "[]", "application/json"],
    [400, '{"email":1,"password":"x"}', "application/json"],
    [400, '{"email":{"$ne":null},"password":"x"}', "application/json"],
    [400, '{"__proto__":{"email":"a@b.co","password":"x"}}', "application/json"],
    [400, JSON.stringify({ email: "a@b.co", password: "x".repeat(1025) }), "application/json"],
    [413, JSON.stringify({ email: "a".repeat(5000), password: "x" }), "application/json"],
    [401, JSON.stringify({ email: "ada@curlew-reach.example", password: "wrong" }), "application/json"],
    [401, JSON.stringify({ email: "nobody@curlew-reach.example", password: "wrong" }), "application/json"],
    [401, JSON.stringify({ email: "not an address", password: "wrong" }), "application/json"],
    [
      401,
      JSON.stringify({ email: "ada@curlew-reach.example", password: "x".repeat(200) }),
      "application/json",
    ],
  ])("[AU18] answers %i to %s as %s", async (status, body, type) => {
    const response = await auth.handler(post(SIGN_IN, body, { "content-type": type }));
    expect(response.status).toBe(status);
    expect(response.headers.getSetCookie()).toEqual([]);
  });

  it("[AU20] limits by the address that the front door wrote, not by what a client claims", async () => {
    const wrong = { ...ACCOUNT, password: "not the password" };
    const from = (door: string, claimed: string) =>
      statusOf(post(SIGN_IN, wrong, { "x-front-door-address": door, "x-forwarded-for": claimed }));
    for (let at = 0; at < 5; at += 1) expect(await from("192.0.2.1", `198.51.100.${at}`)).toBe(401);
    expect(await from("192.0.2.1", "198.51.100.99")).toBe(429);
    expect(await from("192.0.2.2", "198.51.100.99")).toBe(401);
  });
});
