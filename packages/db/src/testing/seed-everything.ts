import { createAlertStore } from "../create-alert-store.ts";
import { createDayStore } from "../create-day-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { createPostgresEntryStore } from "../postgres-entry-store.ts";
import { items, laneOf, openingOf } from "./log-fixtures.ts";
import { seedAcademy, seedMatch } from "./seed-academy.ts";

/** At least one row in every table of an academy, so that a test of isolation cannot pass on empty tables. */
export async function seedEverything(db: Db, academyId: string, isDemo: boolean): Promise<void> {
  await seedAcademy(db, academyId, isDemo);
  const matchId = `match-of-${academyId}`;
  await seedMatch(db, academyId, matchId);
  const day = createDayStore(db);
  const { dayId, courtIds } = await day.createDay({
    academyId,
    name: "Spring match play",
    date: "2026-05-30",
    courts: [{ name: "Court 1" }],
  });
  await day.writeTally({ academyId, matchId, playerId: "player-a", version: "1", tally: { n: 3 } });
  await day.writeAudit({ academyId, actor: "member 1", action: "seeded", detail: { rows: 1 } });
  const nothing = {
    words: "",
    rules: [],
    replaces: [],
    leavesOut: [],
    ruleWords: {},
    sentence: "",
    question: "",
  };
  await day.savePlan({
    academyId,
    playerId: null,
    expected: 0,
    content: nothing,
    note: "",
    savedBy: "member 1",
  });
  const choice = { rates: ["lineMissed"], alpha: 0.05, quiet: false } as const;
  await day.saveWatchSetting({ academyId, playerId: null, expected: 0, choice, savedBy: "member 1" });
  await day.addChoiceFit({ academyId, fit: { players: 1 } });
  await seedLog(db, academyId, matchId);
  await seedAlert(db, academyId, matchId);
  await inAcademy(db, academyId, async ({ sql }) => {
    await sql`
      insert into court_code (academy_id, code_id, code_hash, kind, day_id, court_id, expires_at, code_sealed)
      values (${academyId}, 'code', ${`hash of ${academyId}`}, 'court', ${dayId}, ${courtIds[0] ?? null},
              now() + interval '1 hour', 'sealed')`;
    await sql`
      insert into courtside_session (academy_id, session_id, token_hash, code_id, name, expires_at)
      values (${academyId}, 'session', ${`token of ${academyId}`}, 'code', 'Mila', now() + interval '2 hours')`;
    await sql`
      insert into hand_over (academy_id, hand_over_id, code_hash, code_id, match_id, from_lane, level, made_at, expires_at)
      values (${academyId}, 'hand-over', ${`hand-over of ${academyId}`}, 'code', ${matchId}, 'lead', 'key', now(),
              now() + interval '10 minutes')`;
  });
}

async function seedLog(db: Db, academyId: string, matchId: string): Promise<void> {
  const store = createPostgresEntryStore(db, { log: () => undefined });
  await store.openMatch({ academyId, matchId, opened: openingOf(matchId) });
  await store.openLane(laneOf(academyId, matchId, "lead"));
  const rejected = { n: 4, rejected: { code: "bad_shape", raw: { odd: true } } } as const;
  await store.append({ academyId, matchId, laneId: "lead", items: [...items("lead", 1, 3), rejected] });
  await store.recordHeard([{ academyId, matchId, heardMs: 1_780_000_000_000, unsent: 0 }]);
}

async function seedAlert(db: Db, academyId: string, matchId: string): Promise<void> {
  const store = createAlertStore(db);
  const [atMs, recipient] = [1_780_000_000_000, "member 1"];
  const key = { matchId, playerId: "player-a", rate: "lineMissed", version: 1, episode: 1 } as const;
  const match = { x: 4, n: 5, offPlan: 0 };
  const played = { set: 1, isOver: false, isDue: true, breaks: 1 };
  const said = { match, usual: 0.3, source: "own", strength: 1, ...played } as const;
  const raised = { raisedEntryId: "lead-3", raisedPos: 4, raisedMs: atMs };
  const alert = { ...key, ...raised, side: "A", state: "standing", pos: 4, said } as const;
  await store.writeAlerts({ academyId, matchId, alerts: [alert] });
  const most = { atBreak: 3, inMatch: 5 };
  const claim = {
    academyId,
    matchId,
    recipient,
    channel: "app",
    alerts: [key],
    atBreak: 1,
    most,
    atMs,
  } as const;
  await store.claimNotices(claim);
  await store.addMark({ academyId, key, mark: { kind: "seen", by: recipient, atMs, details: {} } });
}
