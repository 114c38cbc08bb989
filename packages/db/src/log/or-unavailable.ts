import { err, type Result } from "@courtloom/core";
import type { Unavailable } from "../entry-store.ts";
import { isUnavailable } from "../is-unavailable.ts";

/** Turns "the database is away" into an answer; any other error is a bug and goes on. Rule ES15. */
export async function orUnavailable<T, E>(
  call: () => Promise<Result<T, E>>,
): Promise<Result<T, E | Unavailable>> {
  try {
    return await call();
  } catch (error) {
    if (isUnavailable(error)) return err({ code: "unavailable" });
    throw error;
  }
}
