import type { DBAdapter, Where } from "better-auth";
import { hashToken } from "./hash-token.ts";

type Row = Record<string, unknown>;
type Bare = Omit<DBAdapter, "transaction">;

const isToken = (clause: Where): boolean => clause.field === "token";

/** What a clause asks for, hashed the way it is kept. Equality and membership only: a hash has no order. */
const hashClause = (clause: Where): Where => {
  if (!isToken(clause)) return clause;
  const operator = clause.operator ?? "eq";
  if (operator === "in" && Array.isArray(clause.value)) {
    return { ...clause, value: clause.value.map((token) => hashToken(String(token))) };
  }
  if (operator === "eq" && typeof clause.value === "string") {
    return { ...clause, value: hashToken(clause.value) };
  }
  throw new Error(`bug: session tokens cannot be compared by ${operator}`);
};

/** Clear tokens that the caller itself named, by their hash: only those can be given back in clear. */
const namedTokens = (where: readonly Where[] = []): ReadonlyMap<string, string> =>
  new Map(
    where
      .filter(isToken)
      .flatMap((clause) => (Array.isArray(clause.value) ? clause.value : [clause.value]))
      .map((token) => [hashToken(String(token)), String(token)]),
  );

const inClear = <T>(row: T, named: ReadonlyMap<string, string>): T => {
  const token = row === null ? undefined : (row as Row).token;
  const clear = typeof token === "string" ? named.get(token) : undefined;
  return clear === undefined ? row : { ...row, token: clear };
};

const hashData = <T extends Row>(data: T): T =>
  typeof data.token === "string" ? { ...data, token: hashToken(data.token) } : data;

/** A token that is being written may be given back to the writer. */
const withWritten = (named: ReadonlyMap<string, string>, data: Row): ReadonlyMap<string, string> =>
  typeof data.token === "string" ? new Map(named).set(hashToken(data.token), data.token) : named;

const hashWhere = <Q extends { model: string; where?: Where[] | undefined }>(query: Q): Q =>
  query.model === "session" && query.where ? { ...query, where: query.where.map(hashClause) } : query;

const wrap = (inner: Bare): Bare => ({
  ...inner,
  create: async (query) => {
    if (query.model !== "session") return inner.create(query);
    const row = await inner.create({ ...query, data: hashData(query.data as Row) as typeof query.data });
    return inClear(row, withWritten(new Map(), query.data)) as Awaited<
      ReturnType<typeof inner.create>
    > as never;
  },
  findOne: async <T>(query: Parameters<Bare["findOne"]>[0]) =>
    inClear(await inner.findOne<T>(hashWhere(query)), namedTokens(query.where)),
  findMany: async <T>(query: Parameters<Bare["findMany"]>[0]) => {
    const named = namedTokens(query.where);
    return (await inner.findMany<T>(hashWhere(query))).map((row) => inClear(row, named));
  },
  count: (query) => inner.count(hashWhere(query)),
  update: async <T>(query: Parameters<Bare["update"]>[0]) => {
    if (query.model !== "session") return inner.update<T>(query);
    const row = await inner.update<T>({ ...hashWhere(query), update: hashData(query.update) });
    return inClear(row, withWritten(namedTokens(query.where), query.update));
  },
  updateMany: (query) =>
    inner.updateMany(
      query.model === "session" ? { ...hashWhere(query), update: hashData(query.update) } : query,
    ),
  delete: (query) => inner.delete(hashWhere(query)),
  deleteMany: (query) => inner.deleteMany(hashWhere(query)),
  consumeOne: async <T>(query: Parameters<Bare["consumeOne"]>[0]) =>
    inClear(await inner.consumeOne<T>(hashWhere(query)), namedTokens(query.where)),
  incrementOne: async <T>(query: Parameters<Bare["incrementOne"]>[0]) =>
    inClear(await inner.incrementOne<T>(hashWhere(query)), namedTokens(query.where)),
});

/**
 * Puts SHA-256 between the account library and its database: session tokens are hashed on the way in and
 * in conditions, and given back in clear only to who named them. Whoever reads the database can use none.
 */
export const hashSessionTokens = (inner: DBAdapter): DBAdapter => ({
  ...wrap(inner),
  transaction: (work) => inner.transaction((inside) => work(wrap(inside))),
});
