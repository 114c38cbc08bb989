import { inspect } from "node:util";
import { createAuth } from "@courtloom/auth";
import postgres from "postgres";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { openAuthDatabase } from "./open-auth-database.ts";

const PASSWORD = "tide tables and long rallies";

describe("accounts in the database", () => {
  let opened: Awaited<ReturnType<typeof openAuthDatabase>>;
  let app: postgres.Sql;
  let auth: postgres.Sql;

  beforeAll(async () => {
    opened = await openAuthDatabase();
    app = postgres(opened.database.appUrl, { max: 1 });
    auth = postgres(opened.database.authUrl, { max: 1 });
  });
  afterAll(async () => {
    await Promise.all([app.end(), auth.end()]);
    await opened.close();
  });

  const makeAuth = (over = opened) =>
    createAuth({
      accounts: over.accounts,
      store: over.store,
      secret: "a secret of the test, long enough to be one",
      secureCookies: true,
      clock: { wallMs: () => Date.UTC(2026, 4, 30, 9), monotonicMs: () => 0 },
    });

  it("[AU17] keeps the application's role out of every table of accounts", async () => {
    const tables = await opened.owner<{ name: string }[]>`
      select table_name as name from information_schema.tables where table_schema = 'auth'`;
    expect(tables.map(({ name }) => name).sort()).toEqual(["account", "session", "user", "verification"]);
    for (const { name } of tables) {
      await expect(app`select from ${app(`auth.${name}`)}`).rejects.toMatchObject({ code: "42501" });
    }
  });

  it("[AU17] keeps the accounts' role out of every table of academies", async () => {
    const tables = await opened.owner<{ name: string }[]>`
      select table_name as name from information_schema.tables
      where table_schema = 'public' and table_type = 'BASE TABLE'`;
    expect(tables.length).toBeGreaterThan(10);
    for (const { name } of tables) {
      await expect(auth`select from ${auth(`public.${name}`)}`).rejects.toMatchObject({ code: "42501" });
    }
  });

  it("[AU17] keeps times with their zone", async () => {
    const bare = await opened.owner`
      select table_name, column_name from information_schema.columns
      where table_schema = 'auth' and data_type = 'timestamp without time zone'`;
    expect([...bare]).toEqual([]);
  });

  it("[AU5] refuses a session token that is not a hash, whoever writes it", async () => {
    await opened.owner`insert into auth."user" (id, name, email, created_at, updated_at)
      values ('u', 'U', 'u@curlew-reach.example', now(), now())`;
    const write = opened.owner`insert into auth.session (id, token, user_id, expires_at, created_at, updated_at)
      values ('s', 'a clear token', 'u', now(), now(), now())`;
    await expect(write).rejects.toMatchObject({ code: "23514" });
  });

  it("[AU1] makes one account when two ask for the same e-mail at once", async () => {
    const twin = { email: "twin@curlew-reach.example", password: PASSWORD, name: "Twin" };
    const auths = Array.from({ length: 4 }, () => makeAuth());
    const made = await Promise.all(auths.map((one) => one.createAccount(twin)));
    expect(made.filter(({ ok }) => ok)).toHaveLength(1);
    expect(made.filter((one) => !one.ok && one.error === "email_taken")).toHaveLength(3);
    const [{ accounts } = { accounts: 0 }] = await opened.owner<{ accounts: number }[]>`
      select count(*)::int as accounts from auth.account
      join auth."user" u on u.id = user_id where u.email = ${twin.email}`;
    expect(accounts).toBe(1);
  });

  it("[AU4] notes a session's use at most once in five minutes", async () => {
    const account = { email: "often@curlew-reach.example", password: PASSWORD, name: "Often" };
    const one = makeAuth();
    await one.createAccount(account);
    const signedIn = await one.signIn({ ...account, address: "192.0.2.1" });
    if (!signedIn.ok) throw new Error(signedIn.error);
    const { name, value } = signedIn.value.setCookie;
    expect(name).toBe("__Host-courtloom_account");
    const rowVersion = async () =>
      (
        await opened.owner`select xmin::text, expires_at from auth.session where user_id = ${signedIn.value.userId}`
      )[0];
    const before = await rowVersion();
    for (let at = 0; at < 5; at += 1) await one.principalOf(`${name}=${encodeURIComponent(value)}`);
    expect(await rowVersion()).toEqual(before);
  });

  it("[AU18] answers unavailable, and lets nobody in, when the database is away", async () => {
    const lost = await openAuthDatabase();
    const one = makeAuth(lost);
    await lost.close();
    const reported = vi.spyOn(console, "error").mockImplementation(() => undefined);
    const response = await one.handler(
      new Request("http://club.test/api/auth/sign-in/email", {
        method: "POST",
        headers: { "content-type": "application/json", origin: "http://club.test", host: "club.test" },
        body: JSON.stringify({ email: "u@curlew-reach.example", password: PASSWORD }),
      }),
    );
    expect(reported.mock.calls.flat().join(" ")).not.toContain("u@curlew-reach.example");
    expect(reported).toHaveBeenCalledOnce();
    reported.mockRestore();
    expect(response.status).toBe(503);
    expect(await response.json()).toEqual({ ok: false, code: "unavailable" });
    await expect(one.principalOf("__Host-courtloom_courtside=x")).rejects.toThrow();
  });

  it("[AU18] reports an error of the database without the values of the query", async () => {
    const barred = await openAuthDatabase();
    await barred.owner`revoke select on auth."user" from courtloom_auth`;
    const one = makeAuth(barred);
    const email = "told-to-nobody@curlew-reach.example";
    const failure = await one
      .signIn({ email, password: PASSWORD, address: "192.0.2.1" })
      .catch((error) => error);
    await barred.close();
    expect(failure).toMatchObject({ code: "42501" });
    expect(inspect(failure, { depth: 9 }) + JSON.stringify(failure)).not.toContain("told-to-nobody");
  });
});
