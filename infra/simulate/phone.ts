import type { EntryBody } from "@courtloom/match-log";
import { UP } from "@courtloom/protocol";
import {
  type Channel,
  createLane,
  type Lane,
  type LaneDevice,
  type Outbox,
  type Refill,
  refillFormer,
  resumeLane,
  unsentLanes,
} from "@courtloom/sync";
import type { Defect } from "./defect.ts";
import type { DeviceLink } from "./device-link.ts";
import type { Ledger } from "./ledger.ts";
import { pointEntry } from "./live-core.ts";
import type { Stream } from "./stream.ts";
import type { Trace } from "./trace.ts";
import type { Verdict } from "./verdict.ts";
import type { VirtualDisk } from "./virtual-disk.ts";
import type { VirtualTime } from "./virtual-time.ts";

/** A phone at a court, with a person who charts for as long as the pad lets them. */
export interface Phone {
  readonly name: string;
  readonly matchId: string;
  readonly link: DeviceLink;
  readonly disk: VirtualDisk;
  /** The page opens and carries on with what is stored. */
  readonly start: () => void;
  /** The page is gone, at once. What was stored stays. */
  readonly die: () => void;
  readonly isRunning: () => boolean;
  /** Nothing more is charted. */
  readonly rest: () => void;
  /** The person asks for the lead, if another phone is known to have it. */
  readonly takeOver: () => void;
  readonly leads: () => boolean;
  readonly jumpClock: (byMs: number) => void;
  /** Lanes that the page sends, the charted one first. Empty while there is no page. */
  readonly lanes: () => readonly Lane[];
  /** The server's last word on this lane was that another one leads: a person has to decide. */
  readonly isKeptOut: (laneId: string) => boolean;
}

export interface PhoneOptions {
  readonly name: string;
  readonly chartist: string;
  readonly matchId: string;
  readonly time: VirtualTime;
  readonly stream: Stream;
  readonly trace: Trace;
  readonly ledger: Ledger;
  readonly verdict: Verdict;
  readonly link: DeviceLink;
  readonly disk: VirtualDisk;
  readonly defect: Defect | undefined;
  /** A number that no other phone of the schedule has. */
  readonly number: number;
}

/** A person who was refused asks again so often. */
const ASK_AGAIN_MS = 5_000;

/** How often a person who sees that another one leads takes the lead back, of the times they look. */
const TAKES_BACK_SHARE = 0.15;

const idOf = (phone: number, kind: number, count: number): string =>
  `00000000-0000-4000-8${String(kind).padStart(3, "0")}-${String(phone).padStart(4, "0")}${String(count).padStart(8, "0")}`;

/** Notes which lanes the server keeps out, as its answers pass by. */
const noting = (channel: Channel, keptOut: Set<string>): Channel => ({
  ...channel,
  request: async (event, message) => {
    const reply = await channel.request<{ readonly ok: boolean; readonly code?: string }>(event, message);
    if (event === UP.laneOpen) {
      const { laneId } = message as { readonly laneId: string };
      if (reply.code === "lead_taken") keptOut.add(laneId);
      else if (reply.ok) keptOut.delete(laneId);
    }
    return reply as never;
  },
});

/** Tells the ledger what the phone was told, and the verdict if it was told something untrue. */
const watchAcknowledged = (lane: Lane, { name, ledger, verdict }: PhoneOptions): void => {
  let acked = lane.record().acked;
  lane.onChange(() => {
    const now = lane.record().acked;
    const fresh = lane.entries().slice(acked, now);
    acked = now;
    for (const { id } of fresh) {
      ledger.acknowledged(id);
      if (!ledger.knows(id)) verdict.broke("I1", `${name} was told that ${id} is stored before it was`);
    }
  });
};

export const createPhone = (options: PhoneOptions): Phone => {
  const { name, chartist, matchId, number, time, stream, trace, ledger, link, disk, defect } = options;
  const clock = time.clock();
  let counts = { entry: 0, lane: 0 };
  const device: LaneDevice = {
    timers: { after: time.after },
    random: stream.float,
    entryId: () => {
      counts = { ...counts, entry: counts.entry + 1 };
      return idOf(number, 0, counts.entry);
    },
    laneId: () => {
      counts = { ...counts, lane: counts.lane + 1 };
      return idOf(number, 1, counts.lane);
    },
  };
  const lab = { pause: time.wait, isUp: () => true };
  let page = 0;
  let running = false;
  let resting = false;
  let lanes: readonly Lane[] = [];
  let refill: Refill | undefined;
  const keptOut = new Set<string>();

  const bodyOf = (lane: Lane): EntryBody => {
    const last = lane.entries().at(-1);
    if (last?.body.kind === "PointCharted" && stream.chance(0.12))
      return { kind: "EntryVoided", target: last.id };
    if (stream.chance(0.05)) return { kind: "PlaySuspended", reason: "rain" };
    return pointEntry(number, 1, stream.chance(0.5) ? "A" : "B").body;
  };
  const chart = (lane: Lane): void => {
    const charted = lane.chart(bodyOf(lane));
    const id = idOf(number, 0, counts.entry);
    trace.say(name, `charts ${counts.entry}`);
    // Where the phone cannot store, its screen says so and promises nothing.
    void charted.then(() => {
      if (!lane.status().unstored) ledger.confirmed(id);
    });
  };
  const goOn = (lane: Lane, mine: number): void => {
    if (mine !== page || resting) return;
    const { leader, signal } = lane.status();
    const isOut = keptOut.has(lane.record().laneId) || signal === "refused" || leader !== undefined;
    if (!isOut) chart(lane);
    else if (leader !== undefined && stream.chance(TAKES_BACK_SHARE)) lane.takeOver();
    else lane.tryAgain();
    time.after(isOut ? ASK_AGAIN_MS : stream.int(150, 1_400), () => goOn(lane, mine));
  };
  const begin = async (outbox: Outbox, mine: number): Promise<void> => {
    const own = link.open();
    const channel = noting(defect?.phoneChannel?.(own) ?? own, keptOut);
    const wanted = {
      matchId,
      courtName: "Court",
      chartist,
      names: { A: "A", B: "B" },
      level: "every",
    } as const;
    const held = await resumeLane(outbox, wanted, clock.wallMs(), device.laneId);
    if (mine !== page) return;
    const others = (await unsentLanes(outbox)).filter(({ record }) => record.laneId !== held.record.laneId);
    if (mine !== page) return;
    lanes = [held, ...others].map((lane) => createLane({ ...lane, outbox, channel, clock, device }));
    for (const lane of lanes) watchAcknowledged(lane, options);
    const [first] = lanes;
    if (first) {
      const former = { outbox, channel, clock, device, current: first };
      refill = refillFormer({ ...former, onLane: (lane) => watchAcknowledged(lane, options) });
    }
    if (first) time.after(stream.int(20, 400), () => goOn(first, mine));
  };
  return {
    name,
    matchId,
    link,
    disk,
    isRunning: () => running,
    start: () => {
      if (running) return;
      running = true;
      page += 1;
      trace.say(name, "opens the pad");
      const outbox = disk.open();
      void begin(defect?.outbox ? defect.outbox(outbox, lab) : outbox, page);
    },
    die: () => {
      if (!running) return;
      running = false;
      page += 1;
      trace.say(name, "dies");
      for (const lane of lanes) lane.close();
      refill?.close();
      lanes = [];
      disk.open();
      link.close();
    },
    rest: () => {
      resting = true;
    },
    takeOver: () => {
      trace.say(name, "takes over");
      lanes[0]?.takeOver();
    },
    leads: () => {
      const lane = lanes[0];
      return lane !== undefined && lane.record().epoch > 0 && lane.status().leader === undefined;
    },
    jumpClock: clock.jump,
    lanes: () => [...lanes, ...(refill?.lanes() ?? [])],
    isKeptOut: (laneId) => keptOut.has(laneId),
  };
};
