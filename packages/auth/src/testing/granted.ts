import type { Result } from "@courtloom/core";

/** The value of what a test takes for granted. */
export const granted = <T>(result: Result<T, unknown>): T => {
  if (!result.ok) throw new Error(`refused: ${String(result.error)}`);
  return result.value;
};
