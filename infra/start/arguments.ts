import { parseArgs } from "node:util";
import { err, ok, type Result } from "@courtloom/core";

export interface StartArguments {
  /** Put the invented academy into the database and let its day run. */
  readonly demo: boolean;
  /** End TLS with a certificate of a local authority, made at the first such start. */
  readonly https: boolean;
}

export const USAGE = `npm start                 start Courtloom
npm start -- --demo       start it with an invented academy and a day in progress
npm start -- --https      start it with a certificate of its own, for phones that trust this machine
Settings by environment: PORT (3000), HTTPS_PORT (3443), HOST (all), DATA_DIR (.data), DATABASE_URL, PUBLIC_URL,
TLS_CERT and TLS_KEY, TRUSTED_PROXY; infra/README.md explains them`;

/** The error is a sentence with the usage below it. */
export function readArguments(args: readonly string[]): Result<StartArguments, string> {
  try {
    const { values } = parseArgs({
      args: [...args],
      options: { demo: { type: "boolean", default: false }, https: { type: "boolean", default: false } },
    });
    return ok({ demo: values.demo, https: values.https });
  } catch (error) {
    return err(`${error instanceof Error ? error.message : String(error)}\n\n${USAGE}`);
  }
}
