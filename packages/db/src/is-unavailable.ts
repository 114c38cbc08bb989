import postgres from "postgres";

/** The driver's and the system's names for "no connection". */
const CONNECTION = new Set([
  "CONNECTION_CLOSED",
  "CONNECTION_DESTROYED",
  "CONNECTION_ENDED",
  "CONNECT_TIMEOUT",
  "ECONNREFUSED",
  "ECONNRESET",
  "EPIPE",
  "ETIMEDOUT",
  "EHOSTUNREACH",
  "ENETUNREACH",
  "ENOENT",
  "ENOTFOUND",
  "EAI_AGAIN",
]);

/** With these a server ends the connection: 08 connection, 57P shut-down, crash or dropped database, 25P03 idle too long. */
const SERVER_ENDS = /^(08...|57P0[1-5]|25P03)$/;

/** With these it serves others but not this call now: 53 resources, 40 and 55P03 contention, 57014 time. */
const SERVER_BUSY = /^(53...|40001|40P01|55P03|57014)$/;

/** Whether an error means that the connection is gone, so that nothing more can be sent on it. */
export function isConnectionLost(error: unknown): boolean {
  if (!(error instanceof Error)) return false;
  if (error instanceof postgres.PostgresError) return SERVER_ENDS.test(error.code);
  if ("code" in error && typeof error.code === "string" && CONNECTION.has(error.code)) return true;
  if (error instanceof AggregateError && error.errors.length > 0) return error.errors.every(isConnectionLost);
  return isConnectionLost(error.cause);
}

/** Whether an error means that the database is away or overloaded, so that the same call may succeed later. Rule DB8. */
export const isUnavailable = (error: unknown): boolean => isConnectionLost(error) || isBusy(error);

const isBusy = (error: unknown): boolean =>
  error instanceof postgres.PostgresError
    ? SERVER_BUSY.test(error.code)
    : error instanceof Error && isBusy(error.cause);
