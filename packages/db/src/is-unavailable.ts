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

/** Answers of a server that cannot serve just now: 08 connection, 53 resources, 57P shut-down, 40 and 55P03 contention, 57014 and 25P03 time. */
const SERVER = /^(08...|53...|57P0[1-5]|40001|40P01|55P03|57014|25P03)$/;

/** Whether an error means that the database is away or overloaded, so that the same call may succeed later. Rule DB8. */
export function isUnavailable(error: unknown): boolean {
  if (!(error instanceof Error)) return false;
  if (error instanceof postgres.PostgresError) return SERVER.test(error.code);
  if ("code" in error && typeof error.code === "string" && CONNECTION.has(error.code)) return true;
  if (error instanceof AggregateError && error.errors.length > 0) return error.errors.every(isUnavailable);
  return isUnavailable(error.cause);
}
