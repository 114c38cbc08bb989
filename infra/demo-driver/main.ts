import { demoToday, loadDemo } from "@courtloom/api";
import { DEMO_CHARTISTS } from "@courtloom/demo";
import { readCookies, writeCookies } from "./cookies.ts";
import { enterCourt } from "./enter.ts";
import { readDemoEnv } from "./env.ts";
import { openStores, type Stores, systemClock } from "./open-stores.ts";
import { playCourt } from "./play-court.ts";
import type { Happening } from "./script.ts";

/** How far each court's first match has come when the demo is first seen, and what happens there. */
const COURTS: readonly { readonly begun: number; readonly happenings: readonly Happening[] }[] = [
  { begun: 0.45, happenings: [] },
  { begun: 0.5, happenings: [] },
  { begun: 0.35, happenings: [{ type: "silent", at: 60, ms: 150_000 }] },
  { begun: 0.3, happenings: [] },
  { begun: 0.6, happenings: [] },
  { begun: 0.1, happenings: [] },
  { begun: 0, happenings: [] },
  { begun: 0.4, happenings: [{ type: "rain", at: 62, ms: 900_000 }] },
];
/** The first match of this court waits for the first one of the court before it. */
const WAITING_COURT = 7;
const DAY_MS = 86_400_000;

const env = readDemoEnv();
let stopped = false;
process.on("SIGTERM", () => {
  stopped = true;
  // Nothing has to be saved: the server's cursor says where each phone goes on.
  process.exit(0);
});
process.on("disconnect", () => process.exit(0));

const enterAll = async (
  stores: Stores,
  board: { academyId: string; dayId: string; courtIds: readonly string[] },
) => {
  const cookies = readCookies(env.dataDir, env.secureCookies);
  for (const [i, courtId] of board.courtIds.entries()) {
    const kept = cookies.get(courtId);
    if (kept && (await stores.auth.principalOf(kept, "courtside")).ok) continue;
    const chartist = DEMO_CHARTISTS[i % DEMO_CHARTISTS.length] ?? "Chartist";
    const expiresMs = systemClock.wallMs() + DAY_MS;
    cookies.set(courtId, await enterCourt(stores, { ...board, courtId, chartist, expiresMs }));
  }
  writeCookies(env.dataDir, cookies);
  return cookies;
};

const run = async (): Promise<void> => {
  const stores = openStores(env);
  const { academyId, dayId } = await loadDemo({
    store: stores.days,
    createAccount: stores.auth.createAccount,
    date: demoToday(systemClock.wallMs()),
    onProgress: () => undefined,
  });
  const board = await stores.days.dayBoard({ academyId, dayId });
  const matches = await stores.days.dayMatches({ academyId, dayId });
  if (!board) throw new Error("the demo's day is not there");
  const cookies = await enterAll(stores, { academyId, dayId, courtIds: board.courts.map((c) => c.courtId) });
  let firstIsOver: Promise<void> = Promise.resolve();
  const playing = board.courts.map((court) => {
    const { begun = 0, happenings = [] } = COURTS[court.no - 1] ?? {};
    const mine = matches.filter((m) => m.courtId === court.courtId).sort((a, b) => a.orderNo - b.orderNo);
    const play = async (index: number): Promise<void> => {
      const match = mine[index];
      const cookie = cookies.get(court.courtId);
      if (!match || !cookie || match.stage === "sealed") return;
      await playCourt({
        url: env.url,
        cookie,
        match: {
          matchId: match.matchId,
          format: match.format,
          firstServer: match.firstServer ?? "A",
          names: { A: match.players.A.displayName, B: match.players.B.displayName },
        },
        happenings: index === 0 ? happenings : [],
        begun: index === 0 ? begun : 0,
        speed: env.speed,
        clock: systemClock,
        isStopped: () => stopped,
        say: (line) => console.log(`court ${court.no}: ${line}`),
      });
    };
    const start = court.no === WAITING_COURT ? firstIsOver : Promise.resolve();
    const first = start.then(() => play(0));
    firstIsOver = first;
    return first.then(() => play(1));
  });
  await Promise.all(playing);
  await stores.close();
};

await run();
