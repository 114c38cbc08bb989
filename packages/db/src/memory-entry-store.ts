import { err, ok, type Result } from "@courtloom/core";
import { DESK_LANE, ENTRY_VERSION, type Entry, type EntryBody, type LoggedEntry } from "@courtloom/match-log";
import type {
  Append,
  AppendDesk,
  Appended,
  AppendRefused,
  EntryStore,
  HandedLead,
  HandOverAsk,
  Heard,
  Hint,
  LaneIsOpen,
  LeadLane,
  MatchHead,
  MatchIsOpen,
  MatchRef,
  OpenLane,
  OpenLaneRefused,
  OpenMatch,
  OpenMatchRefused,
} from "./entry-store.ts";
import { type HashedItem, hashItem } from "./log/hash-item.ts";
import { isOpening } from "./log/is-opening.ts";
import { planAppend } from "./log/plan-append.ts";
import { planLane } from "./log/plan-lane.ts";

export interface MemoryStoreOptions {
  readonly incarnation: string;
  /** A new random id for an entry of the desk. */
  readonly newId: () => string;
  /** Milliseconds since 1970. */
  readonly wallMs: () => number;
}

export interface MemoryEntryStore extends EntryStore {
  /** Makes a match known, as the day desk does in the database. */
  readonly addMatch: (
    match: MatchRef & { readonly dayId: string | null; readonly courtId: string | null },
  ) => void;
  /** Hands a lead over, as a code that was entered does in the database. */
  readonly addHandOver: (handed: HandOverAsk & HandedLead) => void;
}

interface Lane {
  readonly laneId: string;
  chartist: string;
  owner: LeadLane["owner"];
  level: OpenLane["level"];
  readonly epoch: number;
  /** Items 1, 2, 3 …, taken or rejected. */
  readonly items: HashedItem[];
}

interface Match extends MatchRef {
  readonly dayId: string | null;
  readonly courtId: string | null;
  readonly log: LoggedEntry[];
  readonly ids: Set<string>;
  readonly lanes: Map<string, Lane>;
  epoch: number;
  lead: string | undefined;
  sealed: boolean;
  heard: { readonly heardMs: number; readonly unsent: number } | undefined;
  /** Count of changes in the whole store when this match changed last. */
  changed: number;
}

interface State {
  readonly matches: Map<string, Match>;
  readonly listeners: Set<(hint: Hint) => void>;
  readonly handOvers: (HandOverAsk & HandedLead)[];
  changes: number;
}

/** A match log in memory, by the same rules as the one on disk: for tests and simulations. */
export function createMemoryEntryStore(options: MemoryStoreOptions): MemoryEntryStore {
  const state: State = { matches: new Map(), listeners: new Set(), handOvers: [], changes: 0 };
  const find = (ref: MatchRef): Match | undefined => state.matches.get(keyOf(ref));
  const touch = (match: Match): void => {
    state.changes += 1;
    match.changed = state.changes;
  };
  const appendDesk = async (append: AppendDesk) => writeDesk(find(append), append, options, touch);
  return {
    addMatch: (added) => {
      if (!find(added)) state.matches.set(keyOf(added), emptyMatch(added));
    },
    addHandOver: (handed) => void state.handOvers.unshift(handed),
    handOver: async (ask) => ok(handedLead(state.handOvers.find((handed) => isAbout(handed, ask)))),
    incarnation: async () => ok(options.incarnation),
    openMatch: async (open) => openMatch(find(open), open, options, touch),
    openLane: async (open) => openLane(find(open), open, options, touch),
    lanes: async (ref) => {
      const match = find(ref);
      if (!match) return err({ code: "unknown_match" });
      const lanes = [...match.lanes.values()].filter(({ laneId }) => laneId !== DESK_LANE);
      return ok(lanes.map(({ laneId, chartist }) => ({ laneId, chartist })));
    },
    append: async (append) => appendItems(find(append), append, touch),
    appendDesk,
    sealMatch: (match) => appendDesk({ ...match, body: { kind: "MatchSealed" } }),
    read: async ({ after, limit, ...ref }) => {
      const match = find(ref);
      if (!match) return err({ code: "unknown_match" });
      return ok({ entries: match.log.slice(after, after + limit), head: match.log.length });
    },
    head: async (ref) => {
      const match = find(ref);
      return match ? ok(headOf(match)) : err({ code: "unknown_match" });
    },
    heads: async (since) => {
      const wanted = (match: Match): boolean =>
        match.log.length > 0 && (since === undefined ? !match.sealed : match.changed > Number(since));
      return ok({
        heads: [...state.matches.values()].filter(wanted).map(headOf),
        next: String(state.changes),
      });
    },
    recordHeard: async (heard) => {
      for (const word of heard) recordHeard(find(word), word, touch);
      return ok(undefined);
    },
    notify: (hint) =>
      queueMicrotask(() => {
        for (const listener of state.listeners) listener(hint);
      }),
    listen: async (heard) => {
      const listener = (hint: Hint): void => heard(hint);
      state.listeners.add(listener);
      return ok(async () => {
        state.listeners.delete(listener);
      });
    },
  };
}

const isAbout = (handed: HandOverAsk, ask: HandOverAsk): boolean =>
  keyOf(handed) === keyOf(ask) &&
  handed.laneId === ask.laneId &&
  handed.to.kind === ask.to.kind &&
  handed.to.id === ask.to.id;

const handedLead = (handed: HandedLead | undefined): HandedLead | undefined =>
  handed && { untilMs: handed.untilMs };

const keyOf = ({ academyId, matchId }: MatchRef): string => `${academyId}\n${matchId}`;

const emptyMatch = (
  match: MatchRef & { readonly dayId: string | null; readonly courtId: string | null },
): Match => ({
  ...match,
  log: [],
  ids: new Set(),
  lanes: new Map(),
  epoch: 0,
  lead: undefined,
  sealed: false,
  heard: undefined,
  changed: 0,
});

const headOf = (match: Match): MatchHead => {
  const lead = match.lead === undefined ? undefined : match.lanes.get(match.lead);
  return {
    academyId: match.academyId,
    matchId: match.matchId,
    dayId: match.dayId,
    courtId: match.courtId,
    pos: match.log.length,
    epoch: match.epoch,
    leadLaneId: match.lead ?? null,
    chartist: lead?.chartist ?? null,
    level: lead?.level ?? null,
    sealed: match.sealed,
    heardMs: match.heard?.heardMs ?? null,
    unsent: match.heard?.unsent ?? null,
  };
};

/** Entries go through JSON, as they do on disk: nobody can change what was stored. */
const copy = (entry: Entry): Entry => JSON.parse(JSON.stringify(entry)) as Entry;

const add = (match: Match, lane: Lane, items: readonly HashedItem[]): LoggedEntry[] =>
  items.flatMap((item) => {
    lane.items.push(item);
    if (!("entry" in item)) return [];
    const { laneId, epoch } = lane;
    const logged = { pos: match.log.length + 1, laneId, epoch, entry: copy(item.entry) };
    match.ids.add(item.entry.id);
    match.log.push(logged);
    return [logged];
  });

const deskEntry = (match: Match, body: EntryBody, id: string, wallMs: number): HashedItem => {
  const n = (match.lanes.get(DESK_LANE)?.items.length ?? 0) + 1;
  const atMs = Math.max(0, wallMs - (match.log[0]?.entry.wallMs ?? wallMs));
  return hashItem({ n, entry: { v: ENTRY_VERSION, id, n, atMs, wallMs, body } });
};

function openMatch(
  match: Match | undefined,
  open: OpenMatch,
  options: MemoryStoreOptions,
  touch: (match: Match) => void,
): Result<MatchIsOpen, OpenMatchRefused> {
  if (!match) return err({ code: "unknown_match" });
  const [before] = match.log;
  if (before) {
    if (!isOpening(before.entry.body, open.opened)) return err({ code: "already_opened" });
    return ok({ opening: before, head: match.log.length });
  }
  const desk: Lane = {
    laneId: DESK_LANE,
    chartist: DESK_LANE,
    owner: { kind: "desk", id: DESK_LANE },
    level: "score",
    epoch: 0,
    items: [],
  };
  match.lanes.set(DESK_LANE, desk);
  const item = deskEntry(match, open.opened, options.newId(), options.wallMs());
  const opening = add(match, desk, [item])[0] as LoggedEntry;
  touch(match);
  return ok({ opening, head: 1 });
}

const leadOf = (match: Match): LeadLane | undefined => {
  const lane = match.lead === undefined ? undefined : match.lanes.get(match.lead);
  return lane && { laneId: lane.laneId, chartist: lane.chartist, owner: lane.owner };
};

function openLane(
  match: Match | undefined,
  open: OpenLane,
  options: MemoryStoreOptions,
  touch: (match: Match) => void,
): Result<LaneIsOpen, OpenLaneRefused> {
  if (!match) return err({ code: "unknown_match" });
  if (match.log.length === 0) return err({ code: "not_open" });
  const lead = leadOf(match);
  const found = match.lanes.get(open.laneId);
  const plan = planLane(open, { epoch: match.epoch, sealed: match.sealed, lead, lane: found });
  if (!plan.ok) return plan;
  const { laneId, chartist, owner, level } = open;
  const lane = found ?? { laneId, chartist, owner, level, epoch: plan.value.epoch, items: [] };
  Object.assign(lane, { chartist, owner, level });
  match.lanes.set(laneId, lane);
  if (plan.value.kind === "start") {
    match.epoch = plan.value.epoch;
    match.lead = laneId;
    if (plan.value.takesOver) {
      const taken: EntryBody = { kind: "LeadTaken", laneId, epoch: plan.value.epoch };
      writeDesk(match, { ...match, body: taken }, options, touch);
    }
  }
  touch(match);
  const at = { epoch: lane.epoch, cursor: lane.items.length, head: match.log.length };
  const { lead: leads } = plan.value;
  return ok({ incarnation: options.incarnation, ...at, ...(leads ? { lead: leads } : {}) });
}

function appendItems(
  match: Match | undefined,
  append: Append,
  touch: (match: Match) => void,
): Result<Appended, AppendRefused> {
  if (!match) return err({ code: "unknown_match" });
  const lane = match.lanes.get(append.laneId);
  if (!lane || append.laneId === DESK_LANE) return err({ code: "unknown_lane" });
  const plan = planAppend(append.items.map(hashItem), {
    cursor: lane.items.length,
    hashOf: (n) => lane.items[n - 1]?.hash,
    hasId: (id) => match.ids.has(id),
  });
  if (!plan.ok) return plan;
  const logged = add(match, lane, plan.value);
  if (plan.value.length > 0) touch(match);
  return ok({
    kind: plan.value.length > 0 ? "appended" : "duplicate",
    upTo: lane.items.length,
    head: match.log.length,
    logged,
  });
}

function writeDesk(
  match: Match | undefined,
  append: AppendDesk,
  options: MemoryStoreOptions,
  touch: (match: Match) => void,
): Result<Appended, { readonly code: "unknown_match" | "not_open" }> {
  if (!match) return err({ code: "unknown_match" });
  const desk = match.lanes.get(DESK_LANE);
  if (!desk) return err({ code: "not_open" });
  const seals = append.body.kind === "MatchSealed";
  const known = append.entryId !== undefined && match.ids.has(append.entryId);
  if (known || (seals && match.sealed)) {
    return ok({ kind: "duplicate", upTo: desk.items.length, head: match.log.length, logged: [] });
  }
  const item = deskEntry(match, append.body, append.entryId ?? options.newId(), options.wallMs());
  const logged = add(match, desk, [item]);
  if (seals) match.sealed = true;
  touch(match);
  return ok({ kind: "appended", upTo: desk.items.length, head: match.log.length, logged });
}

function recordHeard(match: Match | undefined, word: Heard, touch: (match: Match) => void): void {
  if (!match || match.log.length === 0) return;
  if (match.heard && match.heard.heardMs >= word.heardMs) return;
  match.heard = { heardMs: word.heardMs, unsent: word.unsent };
  touch(match);
}
