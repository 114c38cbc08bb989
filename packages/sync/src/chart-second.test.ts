import type { EntryBody, LoggedEntry } from "@courtloom/match-log";
import type { LaneOpened, Leader } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { stepLane } from "./lane-machine.ts";
import type { LaneRecord } from "./lane-record.ts";
import type { LaneAction, LaneEnv, LaneEvent, LaneState } from "./lane-state.ts";
import { laneStatus } from "./lane-status.ts";
import { createMemoryOutbox } from "./memory-outbox.ts";
import { resumeLane } from "./resume-lane.ts";
import { startLane } from "./start-lane.ts";

const body: EntryBody = { kind: "PointReplayed" };
const leader: Leader = { by: "Rosa T.", heardMs: 100, serverMs: 4_100, takeOverInMs: 26_000 };
const taken = { ok: false, code: "lead_taken", retry: true, afterMs: 3_000, leader } as const;
const opened = (epoch: number, cursor: number, leads: boolean): LaneOpened => ({
  ok: true,
  incarnation: "inc-1",
  epoch,
  cursor,
  head: 1,
  opening: { pos: 1, laneId: "desk", epoch: 0 } as LoggedEntry,
  chartist: "Ioan P.",
  leads,
  ...(leads ? {} : { leader }),
});
const record: LaneRecord = {
  laneId: "lane-1",
  matchId: "match-1",
  courtName: "Court 1",
  chartist: "Ioan P.",
  names: { A: "Noor V.", B: "Elsbeth K." },
  level: "every",
  acked: 0,
  epoch: 0,
  rejected: [],
  startedWallMs: 1_000,
};

/** A phone with one lane, driven by hand; what the lane wants done piles up until it is taken. */
const makePhone = (from: LaneState = startLane(record, [])) => {
  let lanes = 1;
  const laneId = () => {
    lanes += 1;
    return `lane-${lanes}`;
  };
  const env: LaneEnv = { random: () => 0.5, wallMs: () => 5_000, laneId };
  let state = from;
  let actions: LaneAction[] = [];
  const send = (event: LaneEvent) => {
    const step = stepLane(state, event, env);
    state = step.state;
    actions.push(...step.actions);
  };
  const take = <T extends LaneAction["type"]>(type: T) => {
    const found = actions.filter((a): a is Extract<LaneAction, { type: T }> => a.type === type);
    actions = actions.filter((a) => a.type !== type);
    return found;
  };
  const answerOpen = (reply: Extract<LaneEvent, { type: "openAnswered" }>["reply"]) => {
    const asked = take("sendOpen");
    send({ type: "openAnswered", request: asked.at(-1)?.request ?? 0, reply });
    return asked.map(({ message }) => [message.laneId, message.second ?? false, message.takeOver ?? false]);
  };
  const chart = (id: string) => {
    send({ type: "charted", id, atMs: 0, wallMs: 0, body });
    for (const { laneId: at, entry } of take("store"))
      send({ type: "stored", laneId: at, n: entry.n, safe: true });
  };
  const sent = () => take("sendAppend").map(({ message }) => [message.laneId, message.entries.length]);
  return { send, take, answerOpen, chart, sent, status: () => laneStatus(state), state: () => state };
};

/** Another phone leads, and the person has chosen to chart beside it. */
const besideLead = () => {
  const phone = makePhone();
  phone.send({ type: "linkUp" });
  phone.answerOpen(taken);
  phone.send({ type: "chartSecond" });
  return phone;
};

describe("a second lane", () => {
  it("[SY33] is opened as second, sends and beats, and has no leader to wait for", () => {
    const phone = besideLead();
    expect(phone.take("saveLane").at(-1)?.record).toMatchObject({ laneId: "lane-1", second: true });
    expect(phone.answerOpen(opened(-1, 0, false))).toEqual([["lane-1", true, false]]);
    expect(phone.status()).toMatchObject({ signal: "open", second: { leader } });
    expect(phone.status()).not.toHaveProperty("leader");
    expect(phone.status()).not.toHaveProperty("refusal");
    phone.chart("a");
    expect(phone.sent()).toEqual([["lane-1", 1]]);
    phone.send({ type: "beatDue" });
    expect(phone.take("sendBeat")).toHaveLength(1);
  });

  it("[SY33] stays open when a beat says that it does not lead, and hears who does when the log says it moved", () => {
    const phone = besideLead();
    phone.answerOpen(opened(-1, 0, false));
    phone.send({
      type: "beatAnswered",
      laneId: "lane-1",
      reply: { ok: true, serverMs: 1, leads: false },
    });
    expect(phone.take("sendOpen")).toEqual([]);
    expect(phone.status().signal).toBe("open");
    phone.send({ type: "leadMoved" });
    const reply = { ...opened(-1, 0, false), leader: { ...leader, by: "Dana H." } };
    expect(phone.answerOpen(reply)).toEqual([["lane-1", true, false]]);
    expect(phone.status().second?.leader?.by).toBe("Dana H.");
  });

  it("[SY37] hears with a beat who wrote the match's other lanes, and keeps that until it changes", () => {
    const phone = besideLead();
    phone.answerOpen(opened(-1, 0, false));
    expect(phone.status().others).toEqual([]);
    const beat = (others?: readonly { laneId: string; chartist: string }[]) => {
      const heard = others ? { others } : {};
      const reply = { ok: true, serverMs: 5_000, leads: false, ...heard } as const;
      phone.send({ type: "beatAnswered", laneId: "lane-1", reply });
    };
    beat([{ laneId: "lane-9", chartist: "Rosa T." }]);
    const first = phone.status().others;
    expect(first).toEqual([{ laneId: "lane-9", chartist: "Rosa T." }]);
    beat([{ laneId: "lane-9", chartist: "Rosa T." }]);
    beat();
    expect(phone.status().others).toBe(first);
  });

  it("[SY34] takes along what was charted before anybody answered, also without a link", () => {
    const phone = makePhone();
    phone.chart("a");
    phone.send({ type: "linkUp" });
    phone.answerOpen(taken);
    phone.send({ type: "linkDown" });
    phone.send({ type: "chartSecond" });
    phone.chart("b");
    phone.send({ type: "linkUp" });
    expect(phone.answerOpen(opened(-1, 0, false))).toEqual([["lane-1", true, false]]);
    expect(phone.sent()).toEqual([["lane-1", 2]]);
  });

  it("[SY34] of a person who lost the lead is a new one, once the old one is sent", () => {
    const phone = makePhone();
    phone.send({ type: "linkUp" });
    phone.answerOpen(opened(1, 0, true));
    phone.chart("a");
    phone.send({ type: "linkDown" });
    phone.send({ type: "linkUp" });
    phone.answerOpen(opened(1, 0, false));
    phone.send({ type: "chartSecond" });
    expect(phone.take("fork")).toEqual([]);
    for (const { request } of phone.take("sendAppend")) {
      const reply = { ok: true, kind: "appended", upTo: 1, head: 2, rejected: [] } as const;
      phone.send({ type: "appendAnswered", request, reply });
    }
    phone.send({ type: "chartSecond" });
    expect(phone.take("fork")).toMatchObject([
      {
        closed: { laneId: "lane-1", continuedBy: "lane-2" },
        opened: { laneId: "lane-2", second: true, epoch: 0 },
      },
    ]);
    phone.send({ type: "forkStored", laneId: "lane-2", count: 0, safe: true });
    expect(phone.answerOpen(opened(-1, 0, false))).toEqual([["lane-2", true, false]]);
  });

  it("[SY34] does nothing while this phone leads", () => {
    const phone = makePhone();
    phone.send({ type: "linkUp" });
    phone.answerOpen(opened(1, 0, true));
    phone.take("saveLane");
    phone.send({ type: "chartSecond" });
    expect([...phone.take("fork"), ...phone.take("saveLane"), ...phone.take("sendOpen")]).toEqual([]);
  });

  it("[SY35] never leads itself: a person who takes over begins a lane that asks for the lead", () => {
    const phone = besideLead();
    phone.answerOpen(opened(-1, 0, false));
    phone.send({ type: "takeOver" });
    const [fork] = phone.take("fork");
    expect(fork?.opened.laneId).toBe("lane-2");
    expect(fork?.opened).not.toHaveProperty("second");
    phone.send({ type: "forkStored", laneId: "lane-2", count: 0, safe: true });
    expect(phone.answerOpen(opened(2, 0, true))).toEqual([["lane-2", false, true]]);
    expect(phone.status()).not.toHaveProperty("second");
  });

  it("[SY35] stays second when two pages of one browser wrote to it", () => {
    const phone = besideLead();
    phone.answerOpen(opened(-1, 0, false));
    phone.chart("a");
    phone.send({ type: "taken", laneId: "lane-1", n: 1 });
    expect(phone.take("fork")[0]?.opened).toMatchObject({ laneId: "lane-2", second: true });
  });
});

describe("lanes of one person on one match", () => {
  it("[SY36] are resumed apart when asked for, and the last one used when not", async () => {
    const outbox = createMemoryOutbox();
    const wanted = { ...record, chartist: "Ioan P." };
    const who = {
      matchId: wanted.matchId,
      courtName: wanted.courtName,
      chartist: wanted.chartist,
      names: wanted.names,
      level: wanted.level,
    };
    const ids = ["lane-1", "lane-2"];
    const laneId = () => ids.shift() ?? "lane-3";
    const lead = await resumeLane(outbox, { ...who, second: false }, 1, laneId);
    const second = await resumeLane(outbox, { ...who, second: true }, 2, laneId);
    expect([lead.record.second, second.record.second]).toEqual([undefined, true]);
    const again = async (kind?: boolean) =>
      (await resumeLane(outbox, kind === undefined ? who : { ...who, second: kind }, 3, laneId)).record
        .laneId;
    expect([await again(), await again(true), await again(false)]).toEqual(["lane-2", "lane-2", "lane-1"]);
  });
});
