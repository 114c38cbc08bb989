import type { DBAdapter } from "better-auth";

/** The query builder's errors quote the values of the query, e-mails among them; the driver's error beneath does not. */
const bare = (error: unknown): unknown =>
  error instanceof Error && "params" in error && error.cause instanceof Error ? error.cause : error;

/** An adapter whose errors tell what went wrong and never about whom, so that they may be logged. */
export const withoutParameters = (inner: DBAdapter): DBAdapter => {
  const guard =
    <A extends readonly unknown[], R>(call: (...args: A) => Promise<R>) =>
    async (...args: A): Promise<R> => {
      try {
        return await call(...args);
      } catch (error) {
        throw bare(error);
      }
    };
  return {
    ...inner,
    create: guard(inner.create) as DBAdapter["create"],
    findOne: guard(inner.findOne) as DBAdapter["findOne"],
    findMany: guard(inner.findMany) as DBAdapter["findMany"],
    count: guard(inner.count),
    update: guard(inner.update) as DBAdapter["update"],
    updateMany: guard(inner.updateMany),
    delete: guard(inner.delete),
    deleteMany: guard(inner.deleteMany),
    consumeOne: guard(inner.consumeOne) as DBAdapter["consumeOne"],
    incrementOne: guard(inner.incrementOne) as DBAdapter["incrementOne"],
    transaction: guard(inner.transaction) as DBAdapter["transaction"],
  };
};
