import type { Clock } from "@courtloom/core";
import type { EntryBody, LoggedEntry, MatchView } from "@courtloom/match-log";
import {
  type Channel,
  createChannel,
  createCourtMirror,
  createLane,
  type KnownLog,
  type Lane,
  type LaneRecord,
  type LaneStatus,
  type Outbox,
  refillFormer,
  resumeLane,
  unsentLanes,
} from "@courtloom/sync";
import type { Courtside, CourtsideMatch } from "./courtside.ts";
import { joinLog } from "./join-log.ts";
import { laneLevel, levelIn } from "./lane-level.ts";
import { markCharted } from "./offline/charted-mark.ts";
import { createCopyWatch } from "./offline/copy-watch.ts";
import type { PadLevel } from "./pad-settings.ts";
import { stateScore } from "./second/state-score.ts";
import { type ToldMatch, tellMatch } from "./second/tell-match.ts";

/** Everything that the pad's screen shows of the match and of the way to the server. Kept identical while nothing changes. */
export interface PadSnapshot {
  readonly record: LaneRecord;
  readonly status: LaneStatus;
  /** As joined from the server's log and this phone's own entries. */
  readonly log: readonly LoggedEntry[];
  /** Undefined until the opening is known. */
  readonly view: MatchView | undefined;
  /** The match as everybody has it: another one than `log` and `view` while this phone charts as second. */
  readonly whole: ToldMatch;
  /** The epoch that this phone's next entry has in `log`. */
  readonly epoch: number;
  readonly level: PadLevel;
  /** False when entries live in this page only. */
  readonly durable: boolean;
  /** Unsent entries of this phone's other lanes: earlier matches, other people. */
  readonly otherUnsent: number;
  /** This person has charted something in this lane. */
  readonly charts: boolean;
  /** This phone has lost its own copy of the match: so many points came back from the server. Absent while it has its copy. */
  readonly sentPoints?: number;
}

export interface PadSession {
  readonly get: () => PadSnapshot;
  readonly subscribe: (changed: () => void) => () => void;
  /** Resolves once the fact is on this phone; the snapshot shows it from then on. */
  readonly chart: (body: EntryBody) => Promise<void>;
  readonly tryAgain: () => void;
  /** Asks for the lead; the snapshot shows what came of it. */
  readonly takeOver: () => void;
  /** Charts beside whoever leads from now on. */
  readonly chartSecond: () => void;
  readonly close: () => void;
}

/** Of which matches a session also sends what this phone owes from earlier. Two sessions never send the same lane. */
export interface OtherLanes {
  readonly except?: string;
  readonly only?: string;
}

export interface PadSessionOptions {
  readonly courtside: Courtside;
  readonly match: CourtsideMatch;
  readonly level: PadLevel;
  readonly outbox: Outbox;
  readonly others?: OtherLanes;
}

const deviceClock: Clock = { wallMs: () => Date.now(), monotonicMs: () => performance.now() };

/** Lanes that this phone still owes the server; they are sent beside the one that is charted. */
const sendOthers = async (
  outbox: Outbox,
  channel: Channel,
  own: string,
  { except, only }: OtherLanes,
): Promise<readonly Lane[]> => {
  const held = await unsentLanes(outbox);
  return held
    .filter(({ record }) => record.laneId !== own && record.matchId !== except)
    .filter(({ record }) => only === undefined || record.matchId === only)
    .map(({ record, entries }) => createLane({ record, entries, outbox, channel, clock: deviceClock }));
};

/** Folds the joined log anew only when something in it changed. */
const createViewer = (known: KnownLog | undefined) => {
  let key: readonly unknown[] = [];
  const nothing: ToldMatch = { log: [], view: undefined };
  let shown: Pick<PadSnapshot, "log" | "view" | "whole"> = { ...nothing, whole: nothing };
  return (read: readonly LoggedEntry[], lane: Lane) => {
    const committed = read.length > 0 ? read : (known?.entries ?? []);
    const record = lane.record();
    const next = [
      record.second,
      committed,
      lane.entries(),
      record.opening,
      record.rejected,
      record.epoch,
      record.laneId,
    ];
    if (next.every((part, i) => part === key[i])) return shown;
    key = next;
    shown = tellMatch(joinLog(committed, record, lane.entries()), record);
    return shown;
  };
};

/** Opens this person's lane on a match, resumes what the phone holds of it, and follows the match's log. */
export const openPadSession = async ({
  courtside,
  match,
  level,
  outbox,
  others: sent = {},
}: PadSessionOptions): Promise<PadSession> => {
  const { courtName, chartist } = courtside;
  const { matchId, names } = match;
  const { staff } = courtside;
  const copy = createCopyWatch(matchId, await outbox.lanes());
  const wanted = { matchId, courtName, chartist, names, level, staff };
  const held = await resumeLane(outbox, wanted, deviceClock.wallMs());
  // Who said what may be charted here also speaks for it: the court's code, or a member of staff.
  const channel = createChannel(courtside.staff ? {} : { as: "courtside" });
  const lane = createLane({ ...held, outbox, channel, clock: deviceClock });
  const mirror = createCourtMirror(channel, matchId);
  const others = await sendOthers(outbox, channel, held.record.laneId, sent);
  const former = refillFormer({ current: lane, outbox, channel, clock: deviceClock });
  const viewer = createViewer(await outbox.log(matchId));
  const listeners = new Set<() => void>();
  let leadEpoch = 0;
  let savedEntries: readonly LoggedEntry[] = [];

  const read = (): PadSnapshot => {
    const shown = viewer(mirror.get().entries, lane);
    return {
      ...shown,
      // In its own telling a second lane leads.
      epoch: lane.record().second ? 1 : lane.record().epoch,
      record: lane.record(),
      status: lane.status(),
      level: levelIn(shown.view, laneLevel(lane.record().level, lane.entries())),
      durable: outbox.durable && held.saved,
      otherUnsent: others.reduce((sum, other) => sum + other.status().unsent, 0),
      charts: lane.entries().length > 0,
      ...copy(lane, shown.whole.log),
    };
  };
  let snapshot = read();
  const saveLog = () => {
    const { entries } = mirror.get();
    if (entries === savedEntries || entries.length === 0) return;
    savedEntries = entries;
    // Only spares a blank start without a signal; the server has all of it, so a failure costs nothing.
    void outbox.saveLog({ matchId, incarnation: lane.record().incarnation ?? "", entries });
  };
  const changed = () => {
    snapshot = read();
    saveLog();
    if (snapshot.whole.view?.sealed) lane.markSealed();
    const taken = snapshot.whole.view?.trail.epoch ?? 0;
    if (snapshot.record.second && taken > leadEpoch && leadEpoch > 0) lane.leadMoved();
    leadEpoch = taken;
    for (const listener of listeners) listener();
  };
  const stops = [
    lane.onChange(changed),
    mirror.subscribe(changed),
    ...others.map((o) => o.onChange(changed)),
  ];

  return {
    get: () => snapshot,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    chart: async (body) => {
      const { view } = snapshot.whole;
      const begins = lane.record().second && lane.entries().length === 0;
      const stated = begins && view ? stateScore(view) : undefined;
      if (stated) await lane.chart(stated);
      await lane.chart(body);
      markCharted(lane.record());
    },
    tryAgain: lane.tryAgain,
    takeOver: lane.takeOver,
    chartSecond: lane.chartSecond,
    close: () => {
      for (const stop of stops) stop();
      former.close();
      for (const each of [lane, ...others]) each.close();
      mirror.close();
      channel.close();
    },
  };
};
