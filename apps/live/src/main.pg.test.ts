import { spawn } from "node:child_process";
import { once } from "node:events";
import { createAuth } from "@courtloom/auth";
import {
  createAuthStore,
  createDayStore,
  createPostgresEntryStore,
  type DayStore,
  openAccounts,
  openDb,
} from "@courtloom/db";
import { freshDatabase } from "@courtloom/db/testing";
import { io } from "socket.io-client";
import { expect, it, onTestFinished } from "vitest";
import { pointEntries } from "./testing/entries.ts";
import { processClock } from "./wire/process-runtime.ts";

const ACADEMY = "curlew";
const FORMAT = {
  sets: 3,
  gamesPerSet: 6,
  tiebreakAt: 6,
  tiebreakTo: 7,
  noAd: false,
  finalSet: { kind: "same" },
} as const;

/** A match of before with a hundred line balls, so that there is a usual rate to watch. */
const addPast = async (days: DayStore, a: string, b: string): Promise<void> => {
  const past = { academyId: ACADEMY, dayId: null, courtId: null, playedOn: "2026-05-01", format: FORMAT };
  const added = await days.addMatch({ ...past, playerIds: { A: a, B: b } });
  if (!added.ok) throw new Error(added.error.code);
  const tally = { version: 2, levels: { key: { counts: { lineMissed: [30, 100] }, cells: {} } } };
  const { matchId } = added.value;
  const written = await days.writeTally({ academyId: ACADEMY, matchId, playerId: a, version: "2", tally });
  if (!written.ok) throw new Error(written.error.code);
};

/** A day with one court and one match, and the cookie of a helper who entered with the court's code. */
const setUp = async () => {
  const database = await freshDatabase();
  const db = openDb(database.appUrl);
  const accounts = openAccounts(database.authUrl);
  const days = createDayStore(db);
  const auth = createAuth({
    accounts,
    store: createAuthStore(db),
    secret: database.secret,
    secureCookies: false,
    clock: processClock,
  });
  const made = await days.setupAcademy({
    academyId: ACADEMY,
    name: "Curlew Reach",
    timeZone: "Europe/Lisbon",
    language: "en",
    isDemo: false,
    director: { displayName: "Maren H.", userId: null },
  });
  if (!made.ok) throw new Error(made.error.code);
  const player = { academyId: ACADEMY, birthYear: 2010, squad: null, level: 2, hand: "right" } as const;
  const a = await days.addPlayer({ ...player, displayName: "Noor V.", own: true });
  const b = await days.addPlayer({ ...player, displayName: "Visitor slate", own: false });
  const { dayId, courtIds } = await days.createDay({
    academyId: ACADEMY,
    name: "Tide Cup",
    date: "2026-05-30",
    courts: [{ name: "Court 1" }],
  });
  const [courtId = ""] = courtIds;
  const match = await days.addMatch({
    academyId: ACADEMY,
    dayId,
    courtId,
    playerIds: { A: a.playerId, B: b.playerId },
    format: FORMAT,
  });
  if (!match.ok) throw new Error(match.error.code);
  await addPast(days, a.playerId, b.playerId);
  const issued = await auth.issueCode({
    academyId: ACADEMY,
    kind: "court",
    dayId,
    courtId,
    by: made.value.memberId,
    expiresMs: Date.now() + 3_600_000,
  });
  if (!issued.ok) throw new Error(issued.error);
  const entered = await auth.enterWithCode({
    code: issued.value.code,
    name: "Dana H.",
    address: "192.0.2.1",
  });
  if (!entered.ok) throw new Error(entered.error);
  const { name, value } = entered.value.setCookie;
  onTestFinished(async () => {
    await Promise.all([db.close(), accounts.close()]);
    await database.drop();
  });
  const log = createPostgresEntryStore(db, { log: () => undefined });
  return {
    database,
    days,
    log,
    matchId: match.value.matchId,
    cookie: `${name}=${encodeURIComponent(value)}`,
  };
};

/** Starts the process and waits until it says where it listens. */
const start = async (database: Awaited<ReturnType<typeof setUp>>["database"]) => {
  const child = spawn(process.execPath, [new URL("./main.ts", import.meta.url).pathname], {
    env: {
      APP_DATABASE_URL: database.appUrl,
      AUTH_DATABASE_URL: database.authUrl,
      COURTLOOM_SECRET: database.secret,
      LIVE_PORT: "0",
      INSTANCE_ID: "start-1",
    },
    stdio: ["ignore", "pipe", "pipe"],
  });
  onTestFinished(() => void child.kill("SIGKILL"));
  let output = "";
  const port = await new Promise<number>((resolve, reject) => {
    const read = (chunk: Buffer): void => {
      output += chunk.toString();
      const found = /listens on port (\d+)/.exec(output);
      if (found) resolve(Number(found[1]));
    };
    child.stdout.on("data", read);
    child.stderr.on("data", read);
    child.once("exit", (code) => reject(new Error(`ended with ${code}: ${output}`)));
  });
  return { child, url: `http://127.0.0.1:${port}`, output: () => output };
};

it("[LV25, WA13, WA15] the process takes entries from a helper's phone, keeps them, and ends cleanly when asked", async () => {
  const { database, days, log, matchId, cookie } = await setUp();
  const { child, url, output } = await start(database);
  expect(await (await fetch(`${url}/healthz`)).json()).toEqual({ instanceId: "start-1", ok: true });
  const socket = io(url, {
    path: "/rt",
    addTrailingSlash: false,
    transports: ["websocket"],
    extraHeaders: { origin: url, cookie },
  });
  onTestFinished(() => void socket.disconnect());
  const ask = (event: string, payload: object) =>
    socket.timeout(10_000).emitWithAck(event, { v: 1, matchId, ...payload }) as Promise<
      Record<string, unknown>
    >;
  await once(socket as unknown as NodeJS.EventEmitter, "connect");
  const opened = await ask("lane.open", { laneId: "lane-1", level: "every" });
  expect(opened).toMatchObject({ ok: true, cursor: 0, head: 1, chartist: "Dana H." });
  const first = await log.read({ academyId: ACADEMY, matchId, after: 0, limit: 1 });
  expect(first.ok && first.value.entries[0]?.entry.body).toMatchObject({
    watches: [{ side: "A", rate: "lineMissed", source: "academy", horizon: 40 }],
  });
  const { incarnation } = opened;
  const entries = [...pointEntries(1, 1, 5), { n: 6, nonsense: "\u0000" }, ...pointEntries(1, 7, 9)];
  const batch = { laneId: "lane-1", incarnation, entries };
  expect(await ask("lane.append", batch)).toMatchObject({ ok: true, kind: "appended", upTo: 9, head: 9 });
  expect(await ask("lane.append", batch)).toMatchObject({ ok: true, kind: "duplicate", upTo: 9, head: 9 });
  expect(await ask("lane.beat", { laneId: "lane-1", unsent: 2, wallMs: 1 })).toMatchObject({ ok: true });
  const ended = {
    ...pointEntries(1, 10, 10)[0],
    body: { kind: "MatchEnded", how: { type: "retired", side: "B" } },
  };
  expect(await ask("lane.append", { ...batch, entries: [ended] })).toMatchObject({ ok: true, upTo: 10 });
  await expect
    .poll(async () => (await days.matchCard({ academyId: ACADEMY, matchId }))?.stage, { timeout: 10_000 })
    .toBe("over");
  // Written just after the match was called over.
  await expect
    .poll(() => days.academyTallies({ academyId: ACADEMY }), { timeout: 10_000 })
    .toContainEqual(expect.objectContaining({ matchId, version: "2" }));
  const exit = once(child, "exit");
  child.kill("SIGTERM");
  expect((await exit)[0]).toBe(0);
  const head = await log.head({ academyId: ACADEMY, matchId });
  expect(head.ok && head.value).toMatchObject({ pos: 10, chartist: "Dana H.", unsent: 2 });
  expect(output()).not.toMatch(/"level":50|Dana|Noor/);
});
