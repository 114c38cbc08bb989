import type { EntryBody, LoggedEntry } from "@courtloom/match-log";
import type { LaneOpened, Leader } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { stepLane } from "./lane-machine.ts";
import type { LaneRecord } from "./lane-record.ts";
import type { LaneAction, LaneEnv, LaneEvent, LaneState } from "./lane-state.ts";
import { laneStatus } from "./lane-status.ts";
import { startLane } from "./start-lane.ts";

const body: EntryBody = { kind: "PointReplayed" };
const leader: Leader = { by: "Rosa T.", heardMs: 100, serverMs: 4_100, takeOverInMs: 26_000 };
const taken = (afterMs = 3_000) => ({ ok: false, code: "lead_taken", retry: true, afterMs, leader }) as const;
const opened = (epoch: number, cursor: number): LaneOpened => ({
  ok: true,
  incarnation: "inc-1",
  epoch,
  cursor,
  head: 1,
  opening: { pos: 1, laneId: "desk", epoch: 0 } as LoggedEntry,
  chartist: "Ioan P.",
  leads: true,
});
const lost = (epoch: number, cursor: number): LaneOpened => ({
  ...opened(epoch, cursor),
  leads: false,
  leader,
});

/** A phone with one lane, driven by hand; what the lane wants done piles up until it is taken. */
const makePhone = () => {
  const env: LaneEnv = { random: () => 0.5, wallMs: () => 5_000, laneId: () => "lane-2" };
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
  let state: LaneState = startLane(record, []);
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
    const request = asked.at(-1)?.request ?? 0;
    send({ type: "openAnswered", request, reply });
    return asked.map(({ message }) => [message.laneId, message.takeOver ?? false]);
  };
  const chart = (id: string) => {
    send({ type: "charted", id, atMs: 0, wallMs: 0, body });
    for (const { laneId, entry } of take("store")) send({ type: "stored", laneId, n: entry.n, safe: true });
  };
  const answerAppends = () => {
    const sent = take("sendAppend");
    for (const { request, message } of sent) {
      const upTo = message.entries.at(-1)?.n ?? 0;
      send({
        type: "appendAnswered",
        request,
        reply: { ok: true, kind: "appended", upTo, head: 9, rejected: [] },
      });
    }
    return sent.map(({ message }) => [message.laneId, message.entries.map(({ id }) => id)]);
  };
  return {
    send,
    take,
    answerOpen,
    chart,
    answerAppends,
    status: () => laneStatus(state),
    state: () => state,
  };
};

/** A phone that led, charted two points, lost its link with two more unsent, and came back to another lead. */
const comeBack = () => {
  const phone = makePhone();
  phone.send({ type: "linkUp" });
  phone.answerOpen(opened(1, 0));
  phone.chart("a");
  phone.answerAppends();
  phone.send({ type: "linkDown" });
  phone.chart("b");
  phone.chart("c");
  phone.send({ type: "linkUp" });
  phone.answerOpen(lost(1, 1));
  return phone;
};

describe("a lane that waits for the lead", () => {
  it("[SY17] hears who leads, asks again when the server says, and never asks for the lead by itself", () => {
    const phone = makePhone();
    phone.send({ type: "linkUp" });
    expect(phone.answerOpen(taken(1_200))).toEqual([["lane-1", false]]);
    expect(phone.status()).toMatchObject({ signal: "refused", refusal: "lead_taken", leader });
    expect(phone.take("retryIn")).toEqual([{ type: "retryIn", ms: 1_200 }]);
    expect(phone.take("sendOpen")).toEqual([]);
    for (let i = 0; i < 20; i += 1) {
      phone.send({ type: "retryDue" });
      expect(phone.answerOpen(taken())).toEqual([["lane-1", false]]);
      expect(phone.status()).toMatchObject({ signal: "refused", leader });
    }
    phone.send({ type: "linkDown" });
    phone.send({ type: "linkUp" });
    expect(phone.answerOpen(taken())).toEqual([["lane-1", false]]);
  });

  it("[SY17] asks once when a person wants to take over, and leads when it is granted", () => {
    const phone = makePhone();
    phone.send({ type: "linkUp" });
    phone.answerOpen(taken());
    phone.send({ type: "takeOver" });
    expect(phone.answerOpen(taken())).toEqual([["lane-1", true]]);
    phone.send({ type: "retryDue" });
    expect(phone.answerOpen(taken())).toEqual([["lane-1", false]]);
    phone.send({ type: "takeOver" });
    expect(phone.answerOpen(opened(2, 0))).toEqual([["lane-1", true]]);
    expect(phone.status()).toMatchObject({ signal: "open" });
    expect(phone.status()).not.toHaveProperty("leader");
    expect(phone.status()).not.toHaveProperty("refusal");
    phone.chart("a");
    expect(phone.answerAppends()).toEqual([["lane-1", ["a"]]]);
  });

  it("[SY17] repeats the wish while the server is away, and forgets it with the link", () => {
    const phone = makePhone();
    phone.send({ type: "linkUp" });
    phone.answerOpen(taken());
    phone.send({ type: "takeOver" });
    phone.answerOpen({ ok: false, code: "unavailable", retry: true });
    phone.send({ type: "retryDue" });
    expect(phone.take("sendOpen").map(({ message }) => message.takeOver)).toEqual([true]);
    phone.send({ type: "linkDown" });
    expect(phone.status()).toMatchObject({ signal: "noSignal", leader });
    phone.send({ type: "takeOver" });
    phone.send({ type: "linkUp" });
    expect(phone.answerOpen(taken())).toEqual([["lane-1", false]]);
  });
});

describe("a lane that lost the lead", () => {
  it("[SY18] says who leads and sends what was charted meanwhile in its own lane", () => {
    const phone = comeBack();
    expect(phone.status()).toMatchObject({ signal: "open", leader, unsent: 2 });
    expect(phone.answerAppends()).toEqual([["lane-1", ["b", "c"]]]);
    expect(phone.status()).toMatchObject({ leader, unsent: 0 });
    expect(phone.state().entries).toHaveLength(3);
    expect(phone.state().record).toMatchObject({ laneId: "lane-1", epoch: 1, acked: 3 });
  });

  it("[SY18] hears with a beat that somebody took over, and then from whom", () => {
    const phone = makePhone();
    phone.send({ type: "linkUp" });
    phone.answerOpen(opened(1, 0));
    const beat = (laneId: string, leads: boolean) =>
      phone.send({ type: "beatAnswered", laneId, reply: { ok: true, serverMs: 1, leads } });
    beat("lane-1", true);
    beat("an-older-lane", false);
    expect(phone.take("sendOpen")).toEqual([]);
    beat("lane-1", false);
    phone.answerOpen(lost(1, 0));
    expect(phone.status()).toMatchObject({ signal: "open", leader });
  });

  it("[SY18] takes the lead back in a new lane, once all of the old one is sent", () => {
    const phone = comeBack();
    phone.send({ type: "takeOver" });
    expect(phone.take("fork")).toEqual([]);
    phone.answerAppends();
    phone.send({ type: "takeOver" });
    const [fork] = phone.take("fork");
    expect(fork).toMatchObject({
      closed: { laneId: "lane-1", acked: 3, continuedBy: "lane-2" },
      opened: { laneId: "lane-2", acked: 0, epoch: 0 },
      entries: [],
    });
    expect(phone.take("sendOpen")).toEqual([]);
    phone.send({ type: "forkStored", laneId: "lane-2", count: 0, safe: true });
    expect(phone.answerOpen(opened(3, 0))).toEqual([["lane-2", true]]);
    expect(phone.status()).not.toHaveProperty("leader");
    phone.chart("d");
    expect(phone.answerAppends()).toEqual([["lane-2", ["d"]]]);
  });

  it("[SY18] asks for nothing while it leads", () => {
    const phone = makePhone();
    phone.send({ type: "linkUp" });
    phone.answerOpen(opened(1, 0));
    phone.send({ type: "takeOver" });
    expect([...phone.take("fork"), ...phone.take("sendOpen")]).toEqual([]);
  });

  it("[SY41] a lane that led before the log was restored goes on as second when another one leads", () => {
    const phone = makePhone();
    phone.send({ type: "linkUp" });
    phone.answerOpen(opened(1, 0));
    phone.send({ type: "linkDown" });
    phone.send({ type: "linkUp" });
    phone.answerOpen(taken());
    expect(phone.take("sendOpen").map(({ message }) => message.second)).toEqual([true]);
    expect(phone.take("saveLane").at(-1)?.record.second).toBe(true);
  });
});
