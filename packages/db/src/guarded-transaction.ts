import type postgres from "postgres";
import { isConnectionLost } from "./is-unavailable.ts";

/**
 * The driver's `begin`, safe against a server that goes away. By itself the driver (3.4) writes a lost
 * transaction's next statement, its own `rollback` too, to a socket that is no longer there, from a timer:
 * that ends the process. So a transaction whose connection is lost never gets another statement. Its
 * caller is told at once; the driver has dropped the connection from its pool by then.
 */
export function guardedTransaction<T>(
  sql: postgres.Sql,
  work: (tx: postgres.TransactionSql) => Promise<T>,
): Promise<T> {
  return new Promise<T>((resolve, reject) => {
    let lost: unknown;
    const end = (error: unknown): void => {
      lost ??= error;
      reject(error);
    };
    const running = sql.begin(async (tx) => {
      try {
        const done = await work(refuseWhen(tx, () => lost));
        if (lost === undefined) return { done };
      } catch (error) {
        if (lost === undefined && !isConnectionLost(error)) throw error;
        end(error);
      }
      return never();
    });
    // The driver rejects it as soon as the connection closes, whatever the work is doing.
    running.then(({ done }) => resolve(done), end);
  });
}

/** Not settled: what would follow is a statement on a connection that is gone. */
const never = (): Promise<never> => new Promise(() => undefined);

/** The same transaction, refusing statements once `lost` gives a reason. */
function refuseWhen(tx: postgres.TransactionSql, lost: () => unknown): postgres.TransactionSql {
  const check = (): void => {
    const reason = lost();
    if (reason !== undefined) throw reason;
  };
  return new Proxy(tx, {
    apply: (target, self, args) => {
      check();
      return Reflect.apply(target, self, args);
    },
    get: (target, name, self) => {
      check();
      return Reflect.get(target, name, self);
    },
  });
}
