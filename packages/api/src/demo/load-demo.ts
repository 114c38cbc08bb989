import {
  createRandom,
  DEMO_ACADEMY,
  DEMO_CHARTISTS,
  DEMO_PLAYERS,
  DEMO_STAFF,
  DEMO_VISITORS,
  playSeasons,
  type Random,
} from "@courtloom/demo";
import type { FrozenPlan } from "@courtloom/match-log";
import { STARTER_CONTENT } from "../plan/starter-content.ts";
import { ensureDemoDay } from "./demo-day.ts";
import { type Past, toImport } from "./demo-history.ts";
import type { CreateDemoAccount, DemoStore } from "./demo-store.ts";

export interface LoadDemo {
  readonly store: DemoStore;
  readonly createAccount: CreateDemoAccount;
  /** The day that is in progress, as `2026-05-30` in the demo's time zone. */
  readonly date: string;
  /** Same seed, same academy. */
  readonly seed?: number;
  /** Between 0 and 1, with what is being done; called at least once a second. */
  readonly onProgress: (done: number, what: string) => void;
}

const SEED = 20261125;
/** Matches per call of the store: a transaction of about a second, so that progress is seen. */
const BATCH = 20;

const addPlayers = async (
  store: DemoStore,
  academyId: string,
  random: Random,
): Promise<Map<string, string>> => {
  const ids = new Map<string, string>();
  const there = new Set((await store.listPlayers({ academyId })).map((player) => player.playerId));
  const own = DEMO_PLAYERS.map((p) => ({ ...p, own: true, birthYear: p.birthYear, squad: p.squad }));
  const visitors = DEMO_VISITORS.map((v) => ({
    ...v,
    hand: "unknown" as const,
    own: false,
    birthYear: null,
    squad: null,
  }));
  for (const { id, displayName, hand, birthYear, squad, own: isOwn, level } of [...own, ...visitors]) {
    const playerId = random.uuid();
    ids.set(id, playerId);
    if (there.has(playerId)) continue;
    await store.addPlayer({ academyId, playerId, displayName, hand, birthYear, squad, own: isOwn, level });
  }
  return ids;
};

/** The coaches, who have no account in the demonstration; its director came with the academy. Answers their ids. */
const addCoaches = async (
  store: DemoStore,
  academyId: string,
  random: Random,
): Promise<readonly string[]> => {
  const coaches: string[] = [];
  for (const { name, role } of DEMO_STAFF) {
    const memberId = random.uuid();
    if (role !== "coach") continue;
    await store.addMember({ academyId, memberId, role, displayName: name, userId: null });
    coaches.push(memberId);
  }
  return coaches;
};

/** The starter plan, saved by a coach; one that an earlier run wrote, or that was changed since, stays. */
const ensurePlan = async (store: DemoStore, academyId: string, savedBy: string): Promise<FrozenPlan> => {
  const saved = await store.savePlan({
    ...{ academyId, playerId: null, expected: 0, content: STARTER_CONTENT, savedBy },
    note: "From the starter plan",
  });
  const plan = saved.ok ? saved.value : (await store.plans({ academyId, playerIds: [] }))[0];
  if (!plan) throw new Error("The demo academy's plan could not be saved. Load the demo again.");
  const { planId, version, rules } = plan;
  return { planId, version, rules };
};

const makeAcademy = async ({ store, createAccount }: LoadDemo, random: Random): Promise<string> => {
  const [director] = DEMO_STAFF;
  // An address of its own each time: a set-up that was cut short leaves an account that nothing refers to.
  const email = `director-${random.uuid().slice(0, 8)}@curlew-reach.example`;
  const account = await createAccount({ email, name: director.name });
  if (!account.ok) throw new Error(`The demo director's account could not be made: ${account.error}.`);
  const made = await store.setupAcademy({
    ...DEMO_ACADEMY,
    isDemo: true,
    director: { displayName: director.name, userId: account.value.userId },
  });
  if (!made.ok) throw new Error("The demo academy is being set up by somebody else. Try again in a moment.");
  return made.value.academyId;
};

const importSeasons = async (load: LoadDemo, academyId: string, random: Random): Promise<void> => {
  const { store, date, onProgress } = load;
  const [coach = ""] = await addCoaches(store, academyId, random.fork(`coaches of ${academyId}`));
  const plan = await ensurePlan(store, academyId, coach);
  const ids = await addPlayers(store, academyId, random.fork(academyId));
  const matches = playSeasons(random, Date.parse(`${date}T00:00:00Z`), DEMO_CHARTISTS);
  const past: Past = { plan, byPlayerId: new Map(), academy: [] };
  for (let i = 0; i < matches.length; i += BATCH) {
    onProgress(i / matches.length, `Two seasons: ${i} of ${matches.length} matches`);
    const batch = matches.slice(i, i + BATCH).map((match) => toImport(match, ids, past));
    const first = batch[0]?.opened.matchId;
    // A batch is all or none, so its first match tells whether an earlier run that was cut short wrote it.
    if (first && (await store.matchCard({ academyId, matchId: first }))) continue;
    await store.importMatches({ academyId, matches: batch });
  }
};

/**
 * Sets up the demonstration academy (staff, players, two seasons, the day in progress) unless it is there,
 * and makes sure of the day of `date`. Throws when the database refuses; calling it again goes on where it
 * stopped: the first day is made last, so an academy without one is not complete.
 */
export const loadDemo = async (load: LoadDemo): Promise<{ academyId: string; dayId: string }> => {
  const { store, date, onProgress } = load;
  const random = createRandom(load.seed ?? SEED);
  onProgress(0, "Making the academy");
  const academyId = (await store.demoAcademyId()) ?? (await makeAcademy(load, createRandom(Date.now() | 0)));
  const days = await store.listDays({ academyId });
  if (days.length === 0) await importSeasons(load, academyId, random);
  onProgress(1, "The day in progress");
  return { academyId, dayId: await ensureDemoDay(store, { academyId, date }) };
};
