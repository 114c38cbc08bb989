import { randomUUID } from "node:crypto";
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { ok, type Result } from "@courtloom/core";
import { acquireLock, freePort } from "@courtloom/db/embedded";
import type { StartArguments } from "./arguments.ts";
import { type Addresses, addressesFor, banner, lanAddress, type Scheme } from "./banner.ts";
import { createChildren } from "./children.ts";
import { openDatabase } from "./database.ts";
import type { StartEnv } from "./env.ts";
import { openDoor } from "./open-door.ts";
import type { Product } from "./product.ts";
import type { Say } from "./say.ts";
import { readOrMakeSecret } from "./secret.ts";
import { listenForStop, type StopRequest } from "./stop-request.ts";
import { openTls, type Tls } from "./tls/open-tls.ts";

export interface SuperviseOptions {
  readonly env: StartEnv;
  readonly args: StartArguments;
  readonly product: Product;
  readonly tell: Say;
}

/** Things to undo at the end, last first. */
type Undo = (() => Promise<void> | void)[];

/** Runs the product until it is asked to stop; gives the exit code of the process. */
export async function supervise(options: SuperviseOptions): Promise<number> {
  const { env, tell } = options;
  const addresses = addressesFor(env, lanAddress(), schemeOf(options));
  try {
    mkdirSync(join(env.dataDir, "logs"), { recursive: true, mode: 0o700 });
  } catch (error) {
    tell(
      `The data folder ${env.dataDir} cannot be used: ${String(error)}. Choose another one with DATA_DIR.`,
    );
    return 1;
  }
  const lock = await acquireLock(join(env.dataDir, "supervisor.lock"), addresses.here);
  if (!lock.ok) {
    const { pid, note } = lock.error;
    tell(`Courtloom is already running with this data folder${pid ? ` (process ${pid})` : ""}: ${note}`);
    return 0;
  }
  const undo: Undo = [lock.value.release];
  const stop = listenForStop(tell);
  void start(options, addresses, stop, undo).then(
    (started) => (started.ok ? undefined : stop.fail(started.error)),
    (error) =>
      stop.fail(`Courtloom could not start: ${error instanceof Error ? error.message : String(error)}`),
  );
  const exitCode = await stop.requested;
  tell("Stopping …");
  const complete = await undoAll(undo, tell);
  tell("Stopped.");
  return complete ? exitCode : 1;
}

function schemeOf({ env, args }: SuperviseOptions): Scheme {
  if (env.certificateFiles !== undefined) return "own certificate";
  return args.https ? "local authority" : "http";
}

async function tlsFor(options: SuperviseOptions): Promise<Result<Tls | undefined, string>> {
  return schemeOf(options) === "http" ? ok(undefined) : openTls(options.env, options.tell);
}

function trustOf({ env }: SuperviseOptions, { trust: page }: Addresses, tls: Tls | undefined) {
  if (tls?.authority === undefined || page === undefined) return undefined;
  return { httpsPort: env.httpsPort, certificateFile: tls.authority.certificateFile, page };
}

/** Goes on after a failure: the rest still has to be ended. */
async function undoAll(undo: Undo, tell: Say): Promise<boolean> {
  let complete = true;
  for (const action of undo.reverse()) {
    try {
      await action();
    } catch (error) {
      complete = false;
      tell(`Something could not be ended: ${String(error)}`);
    }
  }
  return complete;
}

async function start(
  options: SuperviseOptions,
  addresses: Addresses,
  stop: StopRequest,
  undo: Undo,
): Promise<Result<void, string>> {
  const { env, args, product, tell } = options;
  const ports = { web: await freePort(), live: await freePort() };
  const tls = await tlsFor(options);
  if (!tls.ok) return tls;
  const trust = trustOf(options, addresses, tls.value);
  const children = createChildren({ env, product, tell, addresses, ports, instanceId: randomUUID(), trust });
  const door = await openDoor({ env, addresses, tls: tls.value, routeTo: children.routeTo });
  if (!door.ok) return door;
  undo.push(door.value.close);

  const secret = env.secret === undefined ? readOrMakeSecret(env.dataDir) : ok(env.secret);
  if (!secret.ok) return secret;
  const opening = openDatabase(env, tell, { onLost: stop.fail, onMoved: (url) => void move(url) });
  undo.push(async () => {
    const opened = await opening;
    if (opened.ok) await opened.value.stop();
  });
  const database = await opening;
  if (!database.ok || stop.isRequested()) return database.ok ? ok(undefined) : database;

  const move = async (ownerUrl: string): Promise<void> => {
    const moved = await product.migrate(ownerUrl, secret.value, tell);
    if (moved.ok) children.useDatabase(moved.value, secret.value);
    else stop.fail(moved.error);
  };
  const urls = await product.migrate(database.value.ownerUrl, secret.value, tell);
  if (!urls.ok || stop.isRequested()) return urls.ok ? ok(undefined) : urls;
  children.useDatabase(urls.value, secret.value);
  const built = await product.build(env.inherited, tell);
  if (!built.ok || stop.isRequested()) return built;
  if (args.demo) {
    const loaded = await product.loadDemo(children.env(), tell);
    if (!loaded.ok || stop.isRequested()) return loaded;
  }
  undo.push(children.stop);
  await children.start();
  if (stop.isRequested()) return ok(undefined);
  const fingerprint = tls.value?.authority?.fingerprint;
  tell(
    await banner({ addresses, dataDir: env.dataDir, isTerminal: process.stdout.isTTY === true, fingerprint }),
  );
  if (args.demo || (await product.isDemoLoaded(children.env(), tell))) children.startDriver();
  return ok(undefined);
}
