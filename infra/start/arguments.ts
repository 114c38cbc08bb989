import { parseArgs } from "node:util";
import { err, ok, type Result } from "@courtloom/core";

export interface StartArguments {
  /** Put the invented academy into the database and let its day run. */
  readonly demo: boolean;
}

export const USAGE = `npm start                 start Courtloom
npm start -- --demo       start it with an invented academy and a day in progress
Settings by environment: PORT (3000), HOST (all), DATA_DIR (.data), DATABASE_URL, PUBLIC_URL`;

/** The error is a sentence with the usage below it. */
export function readArguments(args: readonly string[]): Result<StartArguments, string> {
  try {
    const { values } = parseArgs({ args: [...args], options: { demo: { type: "boolean", default: false } } });
    return ok({ demo: values.demo });
  } catch (error) {
    return err(`${error instanceof Error ? error.message : String(error)}\n\n${USAGE}`);
  }
}
