import { foldLog, type LoggedEntry, type MatchView } from "@courtloom/match-log";
import { alertChanges, createMatchDay, MATCHES, secondChartists, tileAlertsOf, tileOf } from "./live-core.ts";
import type { Phone } from "./phone.ts";
import type { CourtViewer } from "./viewers.ts";
import type { World } from "./world.ts";

/** A match's log as it is on disk, and its fold. */
interface Truth {
  readonly academyId: string;
  readonly matchId: string;
  readonly log: readonly LoggedEntry[];
  readonly view: MatchView | undefined;
}

const WHOLE_LOG = 100_000;

const truthOf = async (world: World, match: (typeof MATCHES)[number]): Promise<Truth> => {
  const { academyId, matchId } = match;
  const page = await world.database.store().read({ academyId, matchId, after: 0, limit: WHOLE_LOG });
  const log = page.ok ? page.value.entries : [];
  // A log with holes cannot be folded; that it has some is found below.
  const isDense = log.every(({ pos }, i) => pos === i + 1);
  const folded = log.length > 0 && isDense ? foldLog(log) : undefined;
  return { academyId, matchId, log, view: folded?.ok ? folded.value : undefined };
};

/** I2, I3, I4. */
const checkLog = ({ verdict }: World, { matchId, log }: Truth): void => {
  const ids = new Set<string>();
  const next = new Map<string, number>();
  for (const [i, { pos, laneId, entry }] of log.entries()) {
    if (pos !== i + 1) verdict.broke("I4", `${matchId} has pos ${pos} at place ${i + 1}`);
    if (ids.has(entry.id)) verdict.broke("I2", `${matchId} has ${entry.id} twice`);
    ids.add(entry.id);
    const n = (next.get(laneId) ?? 0) + 1;
    if (entry.n !== n) verdict.broke("I3", `${matchId} has n ${entry.n} of lane ${laneId} where ${n} is due`);
    next.set(laneId, entry.n);
  }
};

/** I9. */
const checkToldOnce = ({ verdict }: World, { matchId, log }: Truth): void => {
  let epoch = 0;
  for (const { entry } of log) {
    if (entry.body.kind !== "LeadTaken") continue;
    if (entry.body.epoch <= epoch)
      verdict.broke("I9", `${matchId} tells of epoch ${entry.body.epoch} after ${epoch}`);
    epoch = entry.body.epoch;
  }
};

/** I9 for alerts: a backup that was put back has forgotten whom it told, so each allows one notice more. */
const checkNoticedOnce = ({ verdict, ledger, database }: World): void => {
  for (const [told, times] of ledger.notices())
    if (times > 1 + database.restores()) verdict.broke("I9", `${told} told ${times} times`);
};

/** I5 and I6 for alerts: the ledger says what the logs do, and who follows the day sees it. */
const checkAlerts = async (world: World, truths: readonly Truth[]): Promise<void> => {
  const { verdict, database, nodes } = world;
  for (const { academyId, matchId, log, view } of truths) {
    const isFollowed = nodes.some((node) => node.live()?.directory.findMatch({ academyId, matchId })?.view());
    const rows = await database.alerts().alertsOf({ academyId, matchId });
    if (!view || !isFollowed || !rows.ok) continue;
    const lacking = alertChanges({ view, entries: log }, rows.value, 0);
    if (lacking.length > 0) verdict.broke("I5", `the alerts of ${matchId} lack ${JSON.stringify(lacking)}`);
  }
  const day = await database.alerts().dayAlerts({ academyId: "curlew", dayId: "d1" });
  const due = (day.ok ? day.value : []).map(
    ({ matchId, episode, state }) => `${matchId} ${episode} ${state}`,
  );
  for (const { name, mirror } of world.alertViewers) {
    const { state, alerts } = mirror.get();
    const shown = [...alerts.lines.values()].map(
      ({ key, state: says }) => `${key.matchId} ${key.episode} ${says}`,
    );
    if (state !== "live") verdict.broke("I6", `${name} is ${state} at the end`);
    if (shown.toSorted().join() !== due.toSorted().join())
      verdict.broke("I6", `${name} shows ${shown.join()}, due ${due.join()}`);
  }
};

/** How the page that runs says the lane stands; a lane that no page sends has nobody to say it. */
const standing = (phone: Phone, laneId: string): string => {
  const status = phone
    .lanes()
    .find((each) => each.record().laneId === laneId)
    ?.status();
  return status === undefined ? "sent by nobody" : (status.refusal ?? status.signal);
};

/** I7; gives back the entries of lanes that another lead keeps out: they wait on their phone for a person. */
const checkDrained = async ({ verdict, phones }: World): Promise<ReadonlySet<string>> => {
  const waiting = new Set<string>();
  for (const phone of phones) {
    for (const lane of await phone.disk.held().lanes()) {
      if (lane.continuedBy !== undefined) continue;
      const entries = await phone.disk.held().entries(lane.laneId);
      const unsent = entries.slice(lane.acked);
      if (phone.isKeptOut(lane.laneId)) for (const { id } of entries) waiting.add(id);
      else if (unsent.length > 0)
        verdict.broke(
          "I7",
          `${phone.name} has ${unsent.length} of ${entries.length} entries unsent (${standing(phone, lane.laneId)})`,
        );
    }
  }
  return waiting;
};

/** I1. */
const checkKept = (
  { verdict, ledger }: World,
  truths: readonly Truth[],
  waiting: ReadonlySet<string>,
): void => {
  const there = new Set(truths.flatMap(({ log }) => log.map(({ entry }) => entry.id)));
  const { acknowledged, confirmed } = ledger.promised();
  const missing = (id: string): boolean => !there.has(id) && !waiting.has(id);
  for (const id of acknowledged) if (missing(id)) verdict.broke("I1", `acknowledged ${id} is missing`);
  for (const id of confirmed)
    if (missing(id) && !acknowledged.has(id))
      verdict.broke("I1", `${id}, which its phone showed as stored, is missing`);
};

/** I5. */
const checkNodes = ({ verdict, nodes }: World, truths: readonly Truth[]): void => {
  for (const node of nodes) {
    for (const { academyId, matchId, log, view } of truths) {
      const room = node.live()?.directory.findMatch({ academyId, matchId });
      // A room that was never read shows nothing and reads when it is asked.
      if (room === undefined || room.incarnation() === undefined) continue;
      if (room.pos() !== log.length)
        verdict.broke("I5", `${node.name} has ${matchId} up to ${room.pos()} of ${log.length}`);
      else if (JSON.stringify(room.view()) !== JSON.stringify(view))
        verdict.broke("I5", `${node.name} folds ${matchId} differently`);
    }
  }
};

/** I6 for a court's page. */
const checkCourt = ({ verdict }: World, viewer: CourtViewer, { log, view }: Truth): void => {
  const { state, entries, view: shown } = viewer.mirror.get();
  if (state !== "live") verdict.broke("I6", `${viewer.name} is ${state} at the end`);
  if (JSON.stringify(entries) !== JSON.stringify(log))
    verdict.broke(
      "I6",
      `${viewer.name} has ${entries.length} entries of ${viewer.matchId}, not the log's ${log.length}`,
    );
  else if (JSON.stringify(shown) !== JSON.stringify(view))
    verdict.broke("I6", `${viewer.name} folds ${viewer.matchId} differently`);
};

/** A tile without what a node alone knows: when a phone was heard, and since when a pause stands. */
const withoutClocks = (key: string, value: unknown): unknown =>
  key === "heard" ? null : key === "sinceMs" ? undefined : value;

/** I6 for the boards: every tile is the one that the log and the day's tables make. */
const checkBoards = async (world: World, truths: readonly Truth[]): Promise<void> => {
  const { database, verdict } = world;
  const days = createMatchDay({ head: (match) => database.store().head(match) });
  const day = await days.dayBoard({ academyId: "curlew", dayId: "d1" });
  for (const viewer of world.boardViewers) {
    const { state, board } = viewer.mirror.get();
    if (state !== "live") verdict.broke("I6", `${viewer.name} is ${state} at the end`);
    for (const court of day?.courts ?? []) {
      const truth = truths.find(({ matchId }) => matchId === court.current?.matchId);
      const head = truth && (await database.store().head(truth));
      const lanes = truth && (await database.store().lanes(truth));
      const names = new Map(lanes?.ok ? lanes.value.map((lane) => [lane.laneId, lane.chartist]) : []);
      const seconds = secondChartists(truth?.view, names);
      const known = { view: truth?.view, head: head?.ok ? head.value : undefined, seconds };
      const rows = truth && (await database.alerts().alertsOf(truth));
      const alerts = truth?.view && rows?.ok ? tileAlertsOf(truth.view, rows.value) : [];
      const facts = { court, ...known, alerts, heard: undefined };
      const due = tileOf(facts, viewer.view);
      const shown = board.courts.get(court.courtId)?.tile;
      if (JSON.stringify(shown, withoutClocks) !== JSON.stringify(due, withoutClocks))
        verdict.broke(
          "I6",
          `${viewer.name} shows ${court.courtId} with ${shown?.matchId} at pos ${shown?.pos}, due ${due.matchId} at ${due.pos}`,
        );
    }
  }
};

/** Looks at everything once faults have ended and what was under way had 15 s to come right. */
export const checkEnd = async (world: World): Promise<void> => {
  const truths: Truth[] = [];
  for (const match of MATCHES) truths.push(await truthOf(world, match));
  for (const truth of truths) {
    checkLog(world, truth);
    checkToldOnce(world, truth);
  }
  checkKept(world, truths, await checkDrained(world));
  checkNodes(world, truths);
  for (const viewer of world.courtViewers) {
    const truth = truths.find(({ matchId }) => matchId === viewer.matchId);
    if (truth) checkCourt(world, viewer, truth);
  }
  await checkBoards(world, truths);
  checkNoticedOnce(world);
  await checkAlerts(world, truths);
};
