import { err, ok, type Result } from "@courtloom/core";
import { type EmbeddedServer, embeddedErrorSentence, startEmbeddedPostgres } from "@courtloom/db/embedded";
import type { StartEnv } from "./env.ts";
import { checkExternalDatabase } from "./external-database.ts";
import { type Say, step } from "./say.ts";

export interface Database {
  readonly ownerUrl: string;
  readonly stop: () => Promise<void>;
}

export interface DatabaseEvents {
  /** The private server came back at another address: whoever uses the old one has to be told. */
  readonly onMoved: (ownerUrl: string) => void;
  /** It ended and could not be started again. */
  readonly onLost: (sentence: string) => void;
}

/** The database of this start: the one of DATABASE_URL, else the private one, which is kept running. */
export async function openDatabase(
  env: StartEnv,
  tell: Say,
  events: DatabaseEvents,
): Promise<Result<Database, string>> {
  if (env.databaseUrl !== undefined) {
    const checked = await checkExternalDatabase(env.databaseUrl, tell);
    return checked.ok ? ok({ ownerUrl: env.databaseUrl, stop: async () => undefined }) : checked;
  }
  const options = { dataDir: env.dataDir, log: (line: string) => tell(`  ${line}`) };
  const first = await step("Database", tell, () => startEmbeddedPostgres(options));
  if (!first.ok) return err(embeddedErrorSentence(first.error));
  if (first.value.adopted) tell("  the database was still running from an earlier start and is used on");
  const state = { server: first.value, stopping: false };
  const watch = async (server: EmbeddedServer): Promise<void> => {
    await server.exited;
    if (state.stopping) return;
    tell("the database ended; starting it again");
    const again = await startEmbeddedPostgres(options);
    if (!again.ok) return events.onLost(embeddedErrorSentence(again.error));
    const previous = state.server;
    state.server = again.value;
    if (state.stopping) return again.value.stop();
    tell("the database is back");
    if (again.value.url !== previous.url) events.onMoved(again.value.url);
    return watch(again.value);
  };
  watch(first.value).catch((error) => events.onLost(`The database could not be watched: ${String(error)}`));
  const stop = async (): Promise<void> => {
    state.stopping = true;
    await state.server.stop();
  };
  return ok({ ownerUrl: first.value.url, stop });
}
