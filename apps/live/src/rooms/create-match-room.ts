import { err, ok, type Result } from "@courtloom/core";
import type { LoggedEntry, MatchOpened, MatchView } from "@courtloom/match-log";
import { type CourtEntries, DOWN, MAX_READ_ENTRIES, redactEntries } from "@courtloom/protocol";
import type { Runtime } from "../runtime.ts";
import type {
  Appended,
  LaneIsOpen,
  LaneOwner,
  LogStore,
  MatchCard,
  MatchHead,
  MatchRef,
  OpenLaneRefused,
  Unavailable,
} from "../store.ts";
import type { Viewer } from "../viewer.ts";
import type { HeardBook } from "./heard-book.ts";
import { createLogReader, type LogReader } from "./log-reader.ts";
import type { LaneBegun, MatchRoom, OpenLaneAsk, Sight } from "./match-room.ts";
import { lanesIn, secondChartists } from "./second-chartists.ts";
import { createSerial } from "./serial.ts";

export interface RoomDeps {
  readonly runtime: Runtime;
  readonly store: LogStore;
  readonly openingOf: (card: MatchCard) => Promise<MatchOpened>;
  readonly heard: Pick<HeardBook, "speak" | "learn" | "get">;
  /** The fold has changed. */
  readonly folded: (match: MatchRef, view: MatchView, entries: readonly LoggedEntry[]) => void;
}

type Opening = Result<void, OpenLaneRefused | Unavailable>;
type Opened = Result<LaneIsOpen, OpenLaneRefused | Unavailable>;

/** Makes sure that the log has its first entry. SPEC LV6. */
const ensureOpen = async (reader: LogReader, card: MatchCard, deps: RoomDeps): Promise<Opening> => {
  const read = await reader.readOn();
  if (!read.ok || reader.log().entries.length > 0) return read;
  const { academyId, matchId } = card;
  const made = await deps.store.openMatch({ academyId, matchId, opened: await deps.openingOf(card) });
  if (made.ok) return ok(undefined);
  // Another node was first, with an opening that differs: theirs holds.
  return made.error.code === "already_opened" ? ok(undefined) : err({ code: made.error.code });
};

export const createMatchRoom = (ref: MatchRef, deps: RoomDeps): MatchRoom => {
  const { runtime, store } = deps;
  const serial = createSerial();
  const watchers = new Map<Viewer, Sight>();
  const owners = new Map<string, LaneOwner>();
  const listeners = new Set<() => void>();
  /** Who charts in a lane, of the lanes that this room had to name so far. */
  const names = new Map<string, string>();
  let head: MatchHead | undefined;

  const changed = (): void => {
    for (const listener of listeners) listener();
  };
  const publish = (fresh: readonly LoggedEntry[]): void => {
    const incarnation = reader.incarnation();
    if (incarnation === undefined) return;
    const full: CourtEntries = { matchId: ref.matchId, incarnation, entries: fresh };
    const redacted: CourtEntries = { ...full, entries: redactEntries(fresh) };
    for (const [viewer, sight] of watchers)
      viewer.send(DOWN.courtEntries, sight === "full" ? full : redacted);
  };
  const reader = createLogReader({
    ref,
    store,
    runtime,
    took: (fresh) => {
      publish(fresh);
      const { view, entries } = reader.log();
      if (view) deps.folded(ref, view, entries);
      changed();
    },
  });
  const readHead = async (): Promise<void> => {
    const now = await store.head(ref);
    if (!now.ok) return;
    head = now.value;
    const { heardMs, unsent } = now.value;
    if (heardMs !== null) deps.heard.learn({ ...ref, heardMs, unsent: unsent ?? 0 });
  };
  const lacksNames = (): boolean => lanesIn(reader.log().view).some((laneId) => !names.has(laneId));
  /** A lane may have been opened on another node, or before this room began. */
  const learnNames = async (): Promise<void> => {
    const lanes = lacksNames() ? await store.lanes(ref) : undefined;
    if (lanes?.ok) for (const { laneId, chartist } of lanes.value) names.set(laneId, chartist);
  };
  const catchUp = async (): Promise<void> => {
    await reader.readOn();
    if (head === undefined) await readHead();
    await learnNames();
    changed();
  };
  const restart = async (): Promise<void> => {
    reader.forget();
    owners.clear();
    names.clear();
    head = undefined;
    await catchUp();
  };
  /** In the queue, so that of two who take over the second one meets the first as the lead. */
  const openOrTakeOver = async ({ card: _, mayTakeOver, ...lane }: OpenLaneAsk): Promise<Opened> => {
    const opened = await store.openLane({ ...ref, ...lane });
    if (opened.ok || opened.error.code !== "lead_taken") return opened;
    // Another node may have heard the lead's phone since. Boards learn here too who leads: the next look at
    // the heads finds nothing new.
    await readHead();
    changed();
    const { lead } = opened.error;
    const may = mayTakeOver ? await mayTakeOver(lead) : ok(false);
    if (!may.ok) return may;
    if (!may.value) return opened;
    const taken = await store.openLane({ ...ref, ...lane, takeOver: lead.laneId });
    if (taken.ok) store.notify({ matchId: ref.matchId, pos: taken.value.head });
    return taken;
  };
  const speak = ({ cursor }: LaneIsOpen): void => {
    const unsent = cursor === 0 ? 0 : (deps.heard.get(ref)?.unsent ?? 0);
    deps.heard.speak({ ...ref, heardMs: runtime.clock.wallMs(), unsent });
  };
  const openLane = async (ask: OpenLaneAsk): Promise<Result<LaneBegun, OpenLaneRefused | Unavailable>> => {
    const open = await ensureOpen(reader, ask.card, deps);
    if (!open.ok) return open;
    const opened = await openOrTakeOver(ask);
    if (!opened.ok) return opened;
    if (opened.value.lead?.laneId === ask.laneId) speak(opened.value);
    if (opened.value.incarnation !== reader.incarnation()) await restart();
    const read = await reader.readOn();
    const opening = reader.log().entries[0];
    if (!read.ok || opening === undefined) return err({ code: "unavailable" });
    owners.set(ask.laneId, ask.owner);
    names.set(ask.laneId, ask.chartist);
    await readHead();
    changed();
    return ok({ ...opened.value, opening });
  };
  /** Tells readers here and on other nodes; the caller of the append is not kept waiting for it. */
  const spread = async ({ logged, head: pos }: Appended): Promise<void> => {
    if (logged.length === 0) return;
    store.notify({ matchId: ref.matchId, pos });
    if (reader.absorb(logged)) await reader.readOn();
  };
  const append: MatchRoom["append"] = (laneId, claimed, items) => {
    const answer = Promise.withResolvers<Awaited<ReturnType<MatchRoom["append"]>>>();
    const task = async (): Promise<void> => {
      const read = reader.incarnation() === undefined ? await reader.readOn() : ok(undefined);
      const incarnation = reader.incarnation();
      if (!read.ok || incarnation === undefined) return answer.resolve(err({ code: "unavailable" }));
      if (incarnation !== claimed) return answer.resolve(err({ code: "other_incarnation", incarnation }));
      const appended = await store.append({ ...ref, laneId, items });
      answer.resolve(appended);
      if (appended.ok) await spread(appended.value);
    };
    serial.run(task).catch((error: unknown) => {
      runtime.log.fault("an append failed", {
        matchId: ref.matchId,
        pos: reader.log().entries.length,
        error,
      });
      answer.resolve(err({ code: "unavailable" }));
    });
    return answer.promise;
  };
  const read: MatchRoom["read"] = (after, watcher) =>
    serial.run(async () => {
      const pos = reader.log().entries.length;
      if (reader.incarnation() === undefined || pos === 0 || after > pos) {
        const readOn = await reader.readOn();
        if (!readOn.ok) return readOn;
      }
      if (watcher?.still()) watchers.set(watcher.viewer, watcher.sight);
      const { entries: all } = reader.log();
      const entries = all.slice(after, after + MAX_READ_ENTRIES);
      const more = after + entries.length < all.length;
      return ok({ incarnation: reader.incarnation() ?? "", head: all.length, entries, more });
    });

  return {
    ref,
    pos: () => reader.log().entries.length,
    incarnation: reader.incarnation,
    view: () => reader.log().view,
    head: () => head,
    secondChartists: () => secondChartists(reader.log().view, names),
    lacksNames,
    chartists: () =>
      lanesIn(reader.log().view).flatMap((laneId) => {
        const chartist = names.get(laneId);
        return chartist === undefined ? [] : [{ laneId, chartist }];
      }),
    takeHead: (next) => {
      head = next;
      changed();
    },
    openLane: (ask) => serial.run(() => openLane(ask)),
    handedUntil: (laneId, to) => store.handOver({ ...ref, laneId, to }),
    ownerOf: (laneId) => owners.get(laneId),
    append,
    read,
    unwatch: (viewer) => void watchers.delete(viewer),
    catchUp: () => serial.run(catchUp),
    restart: () => serial.run(restart),
    onChange: (listener) => {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    isQuiet: () => watchers.size === 0 && listeners.size === 0 && serial.waiting() === 0,
  };
};
