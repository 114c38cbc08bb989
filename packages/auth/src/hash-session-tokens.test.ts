import type { DBAdapter } from "better-auth";
import { memoryAdapter } from "better-auth/adapters/memory";
import { beforeEach, describe, expect, it } from "vitest";
import { hashSessionTokens } from "./hash-session-tokens.ts";
import { hashToken } from "./hash-token.ts";

type Row = Record<string, unknown>;
const TOKEN = "a clear token";
const NEXT = "the next token";

describe("session tokens between the library and its database", () => {
  let tables: { user: Row[]; session: Row[]; account: Row[]; verification: Row[] };
  let adapter: DBAdapter;
  const byToken = (value: string | string[], operator?: "in") => [
    { field: "token", value, ...(operator ? { operator } : {}) },
  ];
  const sessionOf = (token: string) => {
    const now = new Date(0);
    return { token, userId: "u", expiresAt: now, createdAt: now, updatedAt: now };
  };

  beforeEach(async () => {
    tables = { user: [], session: [], account: [], verification: [] };
    adapter = hashSessionTokens(memoryAdapter(tables)({}));
    const made = await adapter.create<Row>({ model: "session", data: sessionOf(TOKEN) });
    expect(made.token).toBe(TOKEN);
  });

  it("[AU5] are kept as SHA-256 and given in clear to who names them", async () => {
    expect(tables.session.map(({ token }) => token)).toEqual([hashToken(TOKEN)]);
    expect(hashToken("abc")).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    const one = await adapter.findOne<Row>({ model: "session", where: byToken(TOKEN) });
    const many = await adapter.findMany<Row>({ model: "session", where: byToken([TOKEN, "x"], "in") });
    expect([one?.token, many.map(({ token }) => token)]).toEqual([TOKEN, [TOKEN]]);
  });

  it("[AU5] stay hashed for who does not, and a hash opens nothing", async () => {
    const [listed] = await adapter.findMany<Row>({
      model: "session",
      where: [{ field: "userId", value: "u" }],
    });
    expect(listed?.token).toBe(hashToken(TOKEN));
    expect(await adapter.findOne({ model: "session", where: byToken(hashToken(TOKEN)) })).toBeNull();
  });

  it("[AU5] are hashed in changes, counts and deletions too, inside a transaction as well", async () => {
    await adapter.transaction(async (inside) => {
      const changed = await inside.update<Row>({
        model: "session",
        where: byToken(TOKEN),
        update: { token: NEXT },
      });
      expect(changed?.token).toBe(NEXT);
    });
    expect(tables.session.map(({ token }) => token)).toEqual([hashToken(NEXT)]);
    expect(await adapter.count({ model: "session", where: byToken(NEXT) })).toBe(1);
    await adapter.updateMany({ model: "session", where: byToken(NEXT), update: { token: TOKEN } });
    expect(tables.session.map(({ token }) => token)).toEqual([hashToken(TOKEN)]);
    await adapter.delete({ model: "session", where: byToken("another") });
    expect(tables.session).toHaveLength(1);
    expect((await adapter.consumeOne<Row>({ model: "session", where: byToken(TOKEN) }))?.token).toBe(TOKEN);
    await adapter.create<Row>({ model: "session", data: sessionOf(NEXT) });
    expect(await adapter.deleteMany({ model: "session", where: byToken([NEXT], "in") })).toBe(1);
  });

  it("[AU5] cannot be searched by their beginning", async () => {
    const where = [{ field: "token", value: "a", operator: "starts_with" as const }];
    await expect(adapter.findMany({ model: "session", where })).rejects.toThrow("bug");
  });
});
