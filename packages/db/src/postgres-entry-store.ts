import { randomUUID } from "node:crypto";
import { ok } from "@courtloom/core";
import type { EntryStore } from "./entry-store.ts";
import { append } from "./log/append.ts";
import { appendDesk } from "./log/append-desk.ts";
import { listenForHints, sendHints } from "./log/hints.ts";
import { createNotifier } from "./log/notifier.ts";
import { openLane } from "./log/open-lane.ts";
import { openMatch } from "./log/open-match.ts";
import { orUnavailable } from "./log/or-unavailable.ts";
import { readHandOver } from "./log/read-hand-over.ts";
import { readChangedHeads, readHead } from "./log/read-heads.ts";
import { readLanes } from "./log/read-lanes.ts";
import { readLog } from "./log/read-log.ts";
import { recordHeard } from "./log/record-heard.ts";
import type { Db } from "./open-db.ts";

export interface PostgresStoreOptions {
  /** Gets one line when hints could not be sent or heard; nothing is lost by it but time. */
  readonly log: (line: string) => void;
  /** Default: random, and the machine's clock. */
  readonly newId?: () => string;
  readonly wallMs?: () => number;
}

/** The match log in Postgres. Everything that it acknowledges is committed. */
export function createPostgresEntryStore(db: Db, options: PostgresStoreOptions): EntryStore {
  const desk = { newId: options.newId ?? randomUUID, wallMs: options.wallMs ?? Date.now };
  const notifier = createNotifier((hints) => sendHints(db, hints, options.log));
  return {
    incarnation: () => orUnavailable(async () => ok(await readIncarnation(db))),
    openMatch: (open) => orUnavailable(() => openMatch(db, open, desk)),
    openLane: (open) => orUnavailable(() => openLane(db, open, desk)),
    lanes: (match) => orUnavailable(() => readLanes(db, match)),
    handOver: (ask) => orUnavailable(() => readHandOver(db, ask)),
    append: (batch) => orUnavailable(() => append(db, batch)),
    appendDesk: (entry) => orUnavailable(() => appendDesk(db, entry, desk)),
    sealMatch: (match) =>
      orUnavailable(() => appendDesk(db, { ...match, body: { kind: "MatchSealed" } }, desk)),
    read: (page) => orUnavailable(() => readLog(db, page)),
    head: (match) => orUnavailable(() => readHead(db, match)),
    heads: (since) => orUnavailable(async () => ok(await readChangedHeads(db, since))),
    recordHeard: (heard) => orUnavailable(async () => ok(await recordHeard(db, heard))),
    notify: notifier.notify,
    listen: (heard) => orUnavailable(async () => ok(await listenForHints(db, heard, options.log))),
  };
}

async function readIncarnation(db: Db): Promise<string> {
  const [row] = await db.sql<{ incarnation: string }[]>`select incarnation from log_meta`;
  if (!row) throw new Error("log_meta is empty: the database was not migrated");
  return row.incarnation;
}
